package org.drillsheaf.desk.client;

import java.util.function.UnaryOperator;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;

/** Shows ids by their names. */
public final class Named extends StringConverter<String> {
    private final UnaryOperator<String> name;

    public Named(UnaryOperator<String> name) {
        this.name = name;
    }

    @Override
    public String toString(@Nullable String id) {
        return id == null ? "" : name.apply(id);
    }

    @Override
    public String fromString(String text) {
        return text;
    }
}
