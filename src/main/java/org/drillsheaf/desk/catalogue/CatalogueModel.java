package org.drillsheaf.desk.catalogue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.drill.DrillWords;

/** The list of all drills and what is left of it by the query. For the window's thread. */
public final class CatalogueModel {
    private final Words words;
    private final ObjectProperty<DrillQuery> query = new SimpleObjectProperty<>(DrillQuery.ALL);
    private final ObservableList<DrillQuery.Hit> hits = FXCollections.observableArrayList();
    private final ReadOnlyObjectWrapper<String> summary = new ReadOnlyObjectWrapper<>("");
    private final Map<String, Integer> findings = new HashMap<>();
    private final Map<String, String> conditions;
    private List<DrillEntry> entries = List.of();
    private DrillWords drillWords;

    /** @param conditions id to name */
    public CatalogueModel(
            Words words, DrillWords drillWords, Map<String, String> conditions, List<DrillEntry> entries) {
        this.words = words;
        this.conditions = java.util.Collections.unmodifiableMap(new java.util.LinkedHashMap<>(conditions));
        this.drillWords = drillWords;
        query.addListener((of, before, now) -> find());
        show(drillWords, entries);
    }

    /** Shows another catalogue with the same query. */
    public void show(DrillWords ofThese, List<DrillEntry> all) {
        drillWords = ofThese;
        List<DrillEntry> sorted = new ArrayList<>(all);
        sorted.sort(java.util.Comparator.comparing(DrillEntry::names));
        entries = List.copyOf(sorted);
        find();
    }

    public ObjectProperty<DrillQuery> query() {
        return query;
    }

    /** What the query leaves, best first. */
    public ObservableList<DrillQuery.Hit> hits() {
        return hits;
    }

    /** How many are left, in words. */
    public ReadOnlyObjectProperty<String> summary() {
        return summary.getReadOnlyProperty();
    }

    public DrillWords words() {
        return drillWords;
    }

    /** The conditions a list can be narrowed by: id to name. */
    public Map<String, String> conditions() {
        return conditions;
    }

    public int size() {
        return entries.size();
    }

    public Optional<DrillEntry> entry(String id) {
        return entries.stream().filter(e -> e.id().equals(id)).findFirst();
    }

    /** What the check found in a drill; empty when it has not looked yet. */
    public Optional<Integer> findings(String id) {
        return Optional.ofNullable(findings.get(id));
    }

    public void found(String id, int count) {
        findings.put(id, count);
    }

    private void find() {
        DrillQuery now = query.get();
        hits.setAll(now.find(entries));
        boolean whole = now.folded().isEmpty() && !now.isNarrowed();
        summary.set(
                whole
                        ? words.count("drills.all", entries.size())
                        : words.count("drills.some", hits.size(), entries.size()));
    }
}
