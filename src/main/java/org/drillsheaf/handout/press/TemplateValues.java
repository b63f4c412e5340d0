package org.drillsheaf.handout.press;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.handout.paint.Picture;
import org.jspecify.annotations.Nullable;

/**
 * Turns records into the maps, lists, texts and numbers that a template may see, and nothing else: a template never gets hold
 * of an object with methods. An empty {@link Optional} becomes a missing key, a constant its word in small letters with
 * hyphens, a date its ISO text (a month that of its first day), a picture the place where it lies on the shelf.
 */
final class TemplateValues {
    private final PictureShelf shelf;

    TemplateValues(PictureShelf shelf) {
        this.shelf = shelf;
    }

    @SuppressWarnings("unchecked")
    Map<String, Object> of(Record root) {
        return (Map<String, Object>) java.util.Objects.requireNonNull(value(root));
    }

    private @Nullable Object value(@Nullable Object given) {
        if (given instanceof Optional<?> optional) {
            return optional.map(this::value).orElse(null);
        } else if (given instanceof String text) {
            return TextFilter.clean(text);
        } else if (given instanceof Number || given instanceof Boolean) {
            return given;
        } else if (given instanceof Enum<?> constant) {
            return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
        } else if (given instanceof LocalDate || given instanceof LocalTime) {
            return given.toString();
        } else if (given instanceof YearMonth month) {
            return month.atDay(1).toString();
        } else if (given instanceof Picture picture) {
            return shelf.keep(picture);
        } else if (given instanceof Iterable<?> items) {
            List<Object> list = new ArrayList<>();
            items.forEach(item -> addTo(list, value(item)));
            return list;
        } else if (given instanceof Map<?, ?> map) {
            Map<String, Object> copy = new LinkedHashMap<>();
            map.forEach((key, item) -> putInto(copy, String.valueOf(key), value(item)));
            return copy;
        } else if (given instanceof Record record) {
            return components(record);
        }
        throw new IllegalArgumentException("no template may see a " + (given == null ? "null" : given.getClass()));
    }

    private Map<String, Object> components(Record record) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (RecordComponent component : record.getClass().getRecordComponents()) {
            try {
                putInto(map, component.getName(), value(component.getAccessor().invoke(record)));
            } catch (IllegalAccessException | InvocationTargetException e) {
                throw new IllegalStateException("the record " + record.getClass() + " cannot be read", e);
            }
        }
        return map;
    }

    private static void addTo(List<Object> list, @Nullable Object value) {
        if (value != null) {
            list.add(value);
        }
    }

    private static void putInto(Map<String, Object> map, String key, @Nullable Object value) {
        if (value != null) {
            map.put(key, value);
        }
    }
}
