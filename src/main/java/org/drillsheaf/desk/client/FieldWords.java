package org.drillsheaf.desk.client;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.drillsheaf.Side;
import org.drillsheaf.course.Knowledge;
import org.drillsheaf.desk.words.TradeWords;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.screen.MovementTest;
import org.drillsheaf.screen.Norm;
import org.drillsheaf.screen.SafetyQuestion;
import org.drillsheaf.store.record.Content;
import org.drillsheaf.store.record.PartKey;

/** What the fields of a client's record are called where they are typed, and what stands in them. */
record FieldWords(Words words, Knowledge knowledge) {
    private static final int LONGEST_VALUE = 60;
    private static final int MOST_NAMES = 3;

    private TradeWords trade() {
        return new TradeWords(words, knowledge.vocabulary());
    }

    private Optional<MovementTest> test(String path) {
        String[] steps = path.split("/");
        return steps.length < 3 || !steps[1].equals("screen")
                ? Optional.empty()
                : knowledge.vocabulary().reading().battery().test(steps[2]);
    }

    /** What a field is called on the sheet where it is typed. */
    String name(PartKey part, String path) {
        Optional<MovementTest> test = test(path);
        if (test.isPresent()) {
            return place(test.get(), path);
        }
        String[] steps = path.split("/");
        if (path.startsWith("/safety/")) {
            return knowledge.vocabulary().reading().safetyGate().questions().stream()
                    .filter(q -> q.id().equals(steps[2]))
                    .findFirst()
                    .map(q -> question(q))
                    .orElse(steps[2]);
        }
        if (path.startsWith("/coach")) {
            return words.text("two-desks.wishes");
        }
        if (part.equals(PartKey.CONDITIONS)) {
            return words.text("person.conditions");
        }
        String key = "person." + steps[steps.length == 1 ? 0 : 1].replace("languages", "language");
        return part.equals(PartKey.CLIENT) && words.has(key)
                ? words.text(key)
                : path.substring(1).replace('/', ' ');
    }

    /** A value of a test by its name. */
    private String place(MovementTest test, String path) {
        List<String> steps = List.of(path.split("/"));
        String last = steps.get(steps.size() - 1);
        Optional<Side> side =
                Stream.of(Side.values()).filter(s -> steps.contains(s.id())).findFirst();
        String part = test.norm() instanceof Norm.Pair pair
                ? pair.parts().stream()
                        .filter(p -> p.id().equals(last))
                        .findFirst()
                        .map(p -> ", " + trade().part(p))
                        .orElse("")
                : "";
        String mark = words.has("mark." + last) ? ", " + words.text("mark." + last) : "";
        return trade().test(test, side) + part + mark;
    }

    private String question(SafetyQuestion question) {
        return question.text(List.of(words.language(), "en"));
    }

    /** What stands in a field. */
    String value(String path, Content value) {
        String written = value.value("").orElse("");
        String answer = "answer." + written.replace("true", "yes").replace("false", "no");
        if (words.has(answer)) {
            return words.text(answer);
        }
        if (written.matches("-?\\d+(\\.\\d+)?")) {
            return words.number(written)
                    + test(path).map(t -> t.unit().suffix()).orElse("");
        }
        if (!written.isEmpty()) {
            return written;
        }
        String parts = String.join(", ", new TreeSet<>(value.fields().values()));
        return parts.length() > LONGEST_VALUE ? parts.substring(0, LONGEST_VALUE) + " …" : parts;
    }

    /**
     * What came from another desk, who did it there, and what stands as the coach decided, in a sentence each.
     *
     * @param open the visit that is to be seen; fields of another one say which
     */
    String news(List<Saving.News> news, LocalDate open) {
        List<String> sentences = new ArrayList<>();
        for (Saving.News part : news) {
            TreeSet<String> theirs = Merge.changed(part.before(), part.after());
            theirs.removeIf(path -> path.endsWith("/unit"));
            TreeSet<String> decided = new TreeSet<>(theirs);
            decided.retainAll(part.decided());
            theirs.removeAll(decided);
            if (!theirs.isEmpty()) {
                sentences.add(changed(part, theirs, open));
            }
            if (!decided.isEmpty()) {
                sentences.add(words.text("news.settled", settled(part, decided, open)));
            }
        }
        return String.join(" ", sentences);
    }

    private String changed(Saving.News news, Set<String> paths, LocalDate open) {
        String path = paths.iterator().next();
        Optional<String> old = single(path, news.before());
        Optional<String> fresh = single(path, news.after());
        String who = news.by();
        if (paths.size() > 1 || old.isEmpty() && fresh.isEmpty()) {
            return words.text("news.changed", who, names(news, paths, open));
        }
        String name = names(news, paths, open);
        if (old.isEmpty()) {
            return words.text("news.entered", who, name, fresh.get());
        }
        return fresh.isEmpty()
                ? words.text("news.took-out", who, name, old.get())
                : words.text("news.changed-from", who, name, fresh.get(), old.get());
    }

    private String settled(Saving.News news, Set<String> paths, LocalDate open) {
        String path = paths.iterator().next();
        String name = names(news, paths, open);
        return paths.size() > 1
                ? name
                : single(path, news.after()).map(v -> name + ", " + v).orElse(name);
    }

    /** The value of a field that holds one. */
    private Optional<String> single(String path, Content content) {
        return content.below(path).filter(v -> v.value("").isPresent()).map(v -> value(path, v));
    }

    private String names(Saving.News news, Set<String> paths, LocalDate open) {
        Set<String> names = new LinkedHashSet<>();
        paths.forEach(path -> names.add(name(news.part(), path)));
        String some = String.join("; ", names.stream().limit(MOST_NAMES).toList());
        String all = names.size() > MOST_NAMES ? words.text("news.and-more", some, names.size() - MOST_NAMES) : some;
        return news.part()
                .date()
                .filter(day -> !day.equals(open))
                .map(day -> words.text("news.of-visit", all, words.day(day)))
                .orElse(all);
    }
}
