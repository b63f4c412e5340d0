package org.drillsheaf.store.record;

/**
 * Somebody who works with clients here.
 *
 * @param lead may loosen a safety setting
 * @param active picks themselves at the desk
 * @param version of the line; saving names it
 */
public record Coach(String name, boolean lead, boolean active, long version) {}
