package org.drillsheaf.store.sql;

/** The database engines that the record runs on. */
public enum Engine {
    H2,
    POSTGRESQL
}
