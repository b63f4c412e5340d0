package org.drillsheaf.figure.body;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A placed body: its skeleton, the solids around it and the places where they melt together. Immutable. */
public final class Body {
    private final Skeleton skeleton;
    private final BodyBuild build;
    private final List<BodyPart> parts;
    private final List<Blend> blends;
    private final Map<String, Integer> index = new HashMap<>();

    private Body(Skeleton skeleton, BodyBuild build, List<BodyPart> parts, List<Blend> blends) {
        this.skeleton = skeleton;
        this.build = build;
        this.parts = List.copyOf(parts);
        this.blends = List.copyOf(blends);
        for (int i = 0; i < this.parts.size(); i++) {
            index.put(this.parts.get(i).name(), i);
        }
    }

    /** Puts the flesh on a skeleton. */
    public static Body of(Skeleton skeleton, BodyBuild build) {
        Flesh flesh = new Flesh(skeleton, build);
        new TrunkShape(flesh).add();
        new HeadShape(flesh).add();
        for (org.drillsheaf.Side side : org.drillsheaf.Side.values()) {
            new ArmShape(flesh, side).add();
            new LegShape(flesh, side).add();
        }
        return new Body(skeleton, build, flesh.parts, flesh.blends);
    }

    public Skeleton skeleton() {
        return skeleton;
    }

    public BodyBuild build() {
        return build;
    }

    /** The solids; blends and patches name them by their place in this list. */
    public List<BodyPart> parts() {
        return parts;
    }

    public List<Blend> blends() {
        return blends;
    }

    public Optional<BodyPart> part(String name) {
        Integer at = index.get(name);
        return at == null ? Optional.empty() : Optional.of(parts.get(at));
    }

    /** Place of a part in {@link #parts()}. */
    public int indexOf(String name) {
        Integer at = index.get(name);
        if (at == null) {
            throw new IllegalArgumentException("no part " + name);
        }
        return at;
    }

    /** What the shapes add to while a body is built. */
    static final class Flesh {
        final Skeleton skeleton;
        final Sections sections;
        final BodyBuild build;
        private final List<BodyPart> parts = new ArrayList<>();
        private final List<Blend> blends = new ArrayList<>();
        private final Map<String, Integer> index = new HashMap<>();

        private Flesh(Skeleton skeleton, BodyBuild build) {
            this.skeleton = skeleton;
            this.build = build;
            this.sections = Sections.of(build);
        }

        void add(String name, BodyGroup group, FleshSolid solid) {
            index.put(name, parts.size());
            parts.add(new BodyPart(name, group, solid));
        }

        void blend(String first, String second, Vec3 at, double reach, double strength) {
            blends.add(new Blend(
                    java.util.Objects.requireNonNull(index.get(first), first),
                    java.util.Objects.requireNonNull(index.get(second), second),
                    at.x(),
                    at.y(),
                    at.z(),
                    reach,
                    strength));
        }
    }
}
