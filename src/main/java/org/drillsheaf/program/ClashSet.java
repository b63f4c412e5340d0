package org.drillsheaf.program;

import java.util.List;
import java.util.Optional;
import org.drillsheaf.drill.Phase;
import org.drillsheaf.saying.Saying;

/**
 * Requirements that cannot hold together: nothing fits.
 *
 * @param members at least one; without any single one the others can hold together; there may be a second clash beside this one
 * @param smallest whether every smaller set was checked; if not, there may be a smaller one
 */
public record ClashSet(List<Member> members, boolean smallest) implements BuildResult {

    /**
     * One requirement of a clash.
     *
     * @param who where it comes from, for example {@code You pinned}
     * @param what the requirement, for example {@code Tail roll in Restore}
     * @param remedy what to let go, for example {@code Let go of the pin}
     * @param letGo the same for a program that lets go of it
     * @param then what comes when only this is let go
     */
    public record Member(Saying who, Saying what, Saying remedy, LetGo letGo, Saying then) {}

    /**
     * What it is that can be let go.
     *
     * @param subject position, item or drill id; empty for the others
     * @param phase for a pin; empty when it holds everywhere
     */
    public record LetGo(Kind kind, String subject, Optional<Phase> phase) {}

    /** What is asked. */
    public enum Kind {
        AVOID,
        NO_EQUIPMENT,
        PIN,
        LEFT_OUT,
        MINUTES,
        CARRIED
    }

    public ClashSet {
        members = List.copyOf(members);
    }

    /** One sentence that names the members. */
    public Saying words() {
        List<Saying.Phrase> named = members.stream()
                .map(m -> Saying.phrase("clash.member").with("who", m.who()).with("what", m.what()))
                .toList();
        Saying last = named.get(named.size() - 1);
        Saying all = named.size() == 1
                ? last
                : Saying.joined(
                        Saying.Joint.AND, Saying.joined(Saying.Joint.COMMA, named.subList(0, named.size() - 1)), last);
        return Saying.phrase(smallest ? "clash.cannot-hold" : "clash.cannot-hold-maybe-smaller")
                .with("count", members.size())
                .with("members", all);
    }
}
