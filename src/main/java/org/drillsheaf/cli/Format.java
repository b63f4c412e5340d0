package org.drillsheaf.cli;

/** How a command prints its result; the words of the option {@code --format}. */
enum Format {
    text,
    json
}
