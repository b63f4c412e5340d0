package org.drillsheaf.desk.look;

import java.util.function.Function;
import javafx.util.StringConverter;
import org.jspecify.annotations.Nullable;

/** Shows the values of a list that one chooses from by their names. Nothing can be typed into such a list. */
public final class Named<T> extends StringConverter<T> {
    private final Function<T, String> name;

    public Named(Function<T, String> name) {
        this.name = name;
    }

    @Override
    public String toString(@Nullable T value) {
        return value == null ? "" : name.apply(value);
    }

    @Override
    public T fromString(String text) {
        throw new UnsupportedOperationException("the list cannot be typed into");
    }
}
