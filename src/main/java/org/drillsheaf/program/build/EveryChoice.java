package org.drillsheaf.program.build;

/**
 * Every choice of one phase below a limit, in few positions. Where {@link PhaseSearch} looks for the best and leaves what is no better,
 * here nothing may be left but what cannot end below the limit, and the limit says for each level how much of it that is. A goal that may
 * not stay open is served next; a drill is left out as soon as it, with as many others as there are places, cannot gain what is
 * missing, whatever the goals are priced at.
 *
 * <p>One object answers one question after the other; not safe for several threads.
 */
final class EveryChoice {
    /** Takes one choice after the other. */
    interface Taker {
        /** Whether more are wanted. */
        boolean take(Choice choice, long value);
    }

    private final PhaseModel model;
    private final Objective objective;
    private final Tally tally;
    private final PartialChoice choice;
    private final int places;
    private final Beginning beginning;
    private final int[][] drills;
    private final GainPrices prices;

    /** How many drills may be added next. */
    private int count;

    private long required;
    private long least;
    private long below;
    private Taker taker = (found, value) -> false;
    private boolean enough;
    private int mostOpen;
    private int mostMinutes;
    private int mostChanges;
    private int mostThings;
    /** The lowest bound of all that was left out. */
    private long beyond;

    EveryChoice(PhaseModel model, Objective objective, int families, Tally tally) {
        this.model = model;
        this.objective = objective;
        this.tally = tally;
        places = model.task.most();
        choice = new PartialChoice(model, families);
        beginning = new Beginning(choice);
        drills = new int[places + 1][];
        prices = new GainPrices(choice);
    }

    /**
     * Hands over every choice with a value smaller than {@code below}, until no more are wanted.
     *
     * @param positions one bit each; drills in others are left out
     * @param required positions that the choice must use, all among these
     * @param least a lower bound of all choices that are asked for
     * @return what all others that are asked for come to at least; it says nothing when no more were wanted, or when the steps are used up
     */
    long below(long positions, long required, Choice forced, Choice forbidden, long least, long below, Taker taker) {
        if (least >= below) {
            return least;
        }
        this.required = required;
        this.least = least;
        this.below = below;
        this.taker = taker;
        mostOpen = most(Level.COVERAGE);
        mostMinutes = most(Level.MINUTES);
        mostChanges = most(Level.CHANGES);
        mostThings = most(Level.EQUIPMENT);
        enough = false;
        beyond = Long.MAX_VALUE;
        beginning.with(positions, forced, forbidden).ifPresent(this::begin);
        return beyond;
    }

    /** How much of a level a choice below the limit can have: what counts more than the level is never less than in the least. */
    private int most(Level level) {
        long more = (below - 1 - objective.above(level, least)) / objective.one(level, 1);
        return (int) Math.min(Integer.MAX_VALUE, more);
    }

    /** Takes it down that something was left out because it has more of the level than a choice below the limit can have. */
    private void leaveOut(Level level, int most) {
        beyond = Math.min(beyond, objective.above(level, least) + objective.one(level, most + 1));
    }

    private void begin(int[] offered) {
        int[] here = at(choice.size());
        count = 0;
        for (int i : offered) {
            if (choice.fits(i)) {
                here[count++] = i;
            }
        }
        search(choice.size());
    }

    private int[] at(int depth) {
        if (drills[depth] == null) {
            drills[depth] = new int[model.size()];
        }
        return drills[depth];
    }

    private void search(int depth) {
        int[] here = at(depth);
        int n = count;
        tally.look();
        tally.weighed(n + 1);
        if (tally.spent()) {
            return;
        }
        if (depth >= model.task.fewest()) {
            take();
        }
        int free = places - depth;
        if (enough || free == 0) {
            return;
        }
        if (free == 1) {
            last(here, n);
            return;
        }
        n = keep(here, n, free);
        int front = n == 0 ? 0 : front(here, n);
        if (front == 0) {
            tally.ruleOut();
        }
        for (int i = 0; i < front && !enough; i++) {
            choice.add(here[i]);
            int[] next = at(depth + 1);
            count = 0;
            for (int k = i + 1; k < n; k++) {
                if (choice.fits(here[k])) {
                    next[count++] = here[k];
                }
            }
            search(depth + 1);
            choice.removeLast();
        }
    }

    private void take() {
        if ((required & ~choice.positions()) != 0) {
            return;
        }
        long value = objective.pack(
                choice.shortfall(),
                choice.minutesUnder(0),
                choice.changes(),
                Math.max(0, Long.bitCount(choice.positions()) - 1),
                0,
                Long.bitCount(choice.equipment()));
        if (value < below) {
            enough = !taker.take(choice.taken(), value);
        } else {
            beyond = Math.min(beyond, value);
        }
    }

    /** One place is left. */
    private void last(int[] here, int n) {
        long unused = required & ~choice.positions();
        if ((unused & unused - 1) != 0) {
            return;
        }
        int missing = choice.shortfall() - mostOpen;
        prices.usual();
        for (int k = 0; k < n && !enough; k++) {
            int i = here[k];
            if (unused != 0 && model.position[i] != unused) {
                continue;
            }
            if (prices.gain(i) < missing) {
                leaveOut(Level.COVERAGE, mostOpen);
                continue;
            }
            choice.add(i);
            take();
            choice.removeLast();
        }
    }

    /** Keeps the drills that can lead below the limit, in front. */
    private int keep(int[] here, int n, int free) {
        long unused = required & ~choice.positions();
        int needed = Long.bitCount(unused);
        if (needed > free) {
            return 0;
        }
        if (choice.changes() - free > mostChanges) {
            leaveOut(Level.CHANGES, mostChanges);
            return 0;
        }
        long equipment = choice.equipment();
        int longest = 0;
        int kept = 0;
        for (int k = 0; k < n; k++) {
            int i = here[k];
            if (needed == free && (model.position[i] & unused) == 0) {
                continue;
            }
            if (Long.bitCount(equipment | model.equipment[i]) > mostThings) {
                leaveOut(Level.EQUIPMENT, mostThings);
                continue;
            }
            longest = Math.max(longest, model.mostMinutes[i]);
            here[kept++] = i;
        }
        if (choice.minutesUnder(free * longest) > mostMinutes) {
            leaveOut(Level.MINUTES, mostMinutes);
            return 0;
        }
        int able = prices.keep(here, kept, free, mostOpen);
        if (able < kept) {
            leaveOut(Level.COVERAGE, mostOpen);
        }
        return able;
    }

    /** Puts the drills for the goal with the fewest of them in front; all that are left when every goal may stay as it is. */
    private int front(int[] here, int n) {
        int found = -1;
        int fewest = Integer.MAX_VALUE;
        for (int g = 0; g < model.weight.length; g++) {
            if ((long) model.weight[g] * choice.missing(g) <= mostOpen) {
                continue;
            }
            int servers = 0;
            for (int k = 0; k < n && servers < fewest; k++) {
                servers += choice.serves(here[k], g) ? 1 : 0;
            }
            if (servers < fewest) {
                fewest = servers;
                found = g;
            }
        }
        if (found < 0) {
            return n;
        }
        int front = 0;
        for (int k = 0; k < n; k++) {
            if (choice.serves(here[k], found)) {
                int drill = here[k];
                here[k] = here[front];
                here[front++] = drill;
            }
        }
        if (front < n) {
            leaveOut(Level.COVERAGE, mostOpen);
        }
        return front;
    }
}
