package org.drillsheaf.program;

import java.util.List;
import java.util.Optional;
import org.drillsheaf.drill.Phase;

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
    public record Member(String who, String what, String remedy, LetGo letGo, String then) {}

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
    public String words() {
        StringBuilder text =
                new StringBuilder(members.size() == 1 ? "This cannot hold: " : "These cannot hold together: ");
        for (int i = 0; i < members.size(); i++) {
            Member member = members.get(i);
            text.append(i == 0 ? "" : i == members.size() - 1 ? " and " : ", ");
            text.append(member.who().toLowerCase(java.util.Locale.ROOT))
                    .append(": ")
                    .append(member.what());
        }
        return text.append('.')
                .append(smallest ? "" : " There may be a smaller set.")
                .toString();
    }
}
