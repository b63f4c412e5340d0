package org.drillsheaf.desk.client;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.drillsheaf.store.record.Content;
import org.drillsheaf.store.record.PartClash;

/**
 * Two versions of a part that wait to become one. What only one of them changed stands; a field that both changed is decided
 * by the coach, one after the other. A version in which the part was taken away never takes the other one's values with it.
 *
 * @param standing what the desk shows of this part until it is settled
 * @param open fields without a decision yet
 * @param theirs fields in which the other desk's value was taken
 */
public record OpenClash(PartClash clash, Content standing, List<Field> open, Set<String> theirs) {

    /** One field that both changed, differently. An empty value: the field is not there. */
    public record Field(String path, Optional<Content> mine, Optional<Content> theirs) {}

    public OpenClash {
        open = List.copyOf(open);
        theirs = Set.copyOf(theirs);
    }

    /** A clash with what is being typed here. */
    static OpenClash live(PartClash clash) {
        return new OpenClash(clash, clash.mine().orElse(Content.emptyMap()), fields(clash), Set.of());
    }

    /** A clash that was left unsettled in the record; the desk shows the other version. */
    static OpenClash found(PartClash clash) {
        return new OpenClash(clash, clash.theirs().content().orElse(Content.emptyMap()), fields(clash), Set.of());
    }

    private static List<Field> fields(PartClash clash) {
        if (clash.mine().isEmpty() || clash.theirs().content().isEmpty()) {
            return List.of();
        }
        Content base = clash.base().orElse(Content.emptyMap());
        Content mine = clash.mine().get();
        Content theirs = clash.theirs().content().get();
        return Merge.clashing(base, mine, theirs).stream()
                .map(path -> new Field(path, mine.below(path), theirs.below(path)))
                .toList();
    }

    /** With one field decided. */
    OpenClash decide(Field field, boolean mine) {
        List<Field> left = new ArrayList<>(open);
        left.remove(field);
        TreeSet<String> taken = new TreeSet<>(theirs);
        if (!mine) {
            taken.add(field.path());
        }
        return new OpenClash(clash, standing, left, taken);
    }

    /** The decisions made here in a later clash of the same part, as far as nobody changed those fields since. */
    OpenClash carriedTo(OpenClash later) {
        OpenClash carried = later;
        for (Field field : fields(clash)) {
            boolean isDecided = !open.contains(field);
            if (isDecided
                    && later.clash().part().equals(clash.part())
                    && later.open().contains(field)) {
                carried = carried.decide(field, !theirs.contains(field.path()));
            }
        }
        return carried;
    }

    /** The fields that were decided, this way or that. */
    Set<String> decidedPaths() {
        return fields(clash).stream()
                .filter(field -> !open.contains(field))
                .map(Field::path)
                .collect(Collectors.toSet());
    }

    boolean isDecided() {
        return open.isEmpty();
    }

    /** What both versions come to. */
    Content decided() {
        if (clash.mine().isEmpty() || clash.theirs().content().isEmpty()) {
            return clash.mine().or(() -> clash.theirs().content()).orElse(Content.emptyMap());
        }
        return Merge.of(
                clash.base().orElse(Content.emptyMap()),
                clash.mine().get(),
                clash.theirs().content().get(),
                theirs);
    }
}
