package org.drillsheaf.program.build;

/**
 * What neighbouring phases cost at least when they are planned together. A short block is solved exactly before a longer one
 * and then bounds it; the longest, all phases, is the question itself. Immutable after it is made.
 */
final class BlockBounds {
    /** Nodes for one block; a block that needs more is bounded by what was shown until then. */
    private static final long NODES = 3_000;

    private final long[][] atLeast;

    private BlockBounds(int phases) {
        atLeast = new long[phases][phases];
    }

    static BlockBounds of(Model model, Objective objective, PhaseMemo memo, Tally tally) {
        int phases = model.phases.size();
        BlockBounds bounds = new BlockBounds(phases);
        for (int length = 2; length < phases; length++) {
            for (int from = 0; from + length <= phases; from++) {
                Model block = model.block(from, from + length);
                SearchResult result = new ProgramSearch(
                                block, objective, memo, bounds.within(from, length), tally, NODES, Long.MAX_VALUE)
                        .run();
                bounds.atLeast[from][from + length - 1] = result.bound();
            }
        }
        return bounds;
    }

    static BlockBounds none(int phases) {
        return new BlockBounds(phases);
    }

    private BlockBounds within(int from, int length) {
        BlockBounds part = new BlockBounds(length);
        for (int p = 0; p < length; p++) {
            System.arraycopy(atLeast[from + p], from, part.atLeast[p], 0, length);
        }
        return part;
    }

    boolean impossible() {
        for (long[] row : atLeast) {
            for (long value : row) {
                if (value == Long.MAX_VALUE) {
                    return true;
                }
            }
        }
        return false;
    }

    /** For each i what the phases before i cost at least in this node. */
    long[] before(Node node) {
        int phases = atLeast.length;
        long[] sum = new long[phases + 1];
        for (int q = 0; q < phases; q++) {
            sum[q + 1] = sum[q] + node.phaseAtLeast(q);
            for (int p = 0; p < q; p++) {
                sum[q + 1] = Math.max(sum[q + 1], sum[p] + atLeast[p][q]);
            }
        }
        return sum;
    }

    /** For each i what the phases from i on cost at least in this node. */
    long[] from(Node node) {
        int phases = atLeast.length;
        long[] sum = new long[phases + 1];
        for (int p = phases - 1; p >= 0; p--) {
            sum[p] = sum[p + 1] + node.phaseAtLeast(p);
            for (int q = p + 1; q < phases; q++) {
                sum[p] = Math.max(sum[p], atLeast[p][q] + sum[q + 1]);
            }
        }
        return sum;
    }
}
