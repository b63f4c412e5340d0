package org.drillsheaf.desk.pose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.desk.drill.Draft;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.desk.work.Background;
import org.drillsheaf.desk.work.Lane;
import org.drillsheaf.figure.body.Skeleton;
import org.drillsheaf.figure.pose.Penetration;
import org.drillsheaf.figure.pose.Penetrations;
import org.drillsheaf.figure.pose.Pose;
import org.drillsheaf.figure.pose.PoseFrame;
import org.drillsheaf.figure.pose.PoseSheet;
import org.drillsheaf.figure.pose.PoseSolver;
import org.drillsheaf.figure.pose.SolvedPose;

/**
 * What the pose of a draft comes to: its sheet as read, and its keyframe solved in the background, where the newest wins. For the
 * window's thread.
 */
final class PoseSolving {
    private final Draft draft;
    private final Words words;
    private final ObservableValue<PoseFrame> frame;
    private final Supplier<Optional<InHand>> inHand;
    private final Consumer<String> failed;
    private final Lane solving;
    private final ReadOnlyObjectWrapper<Optional<SolvedPose>> solved = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<Skeleton>> skeleton = new ReadOnlyObjectWrapper<>(Optional.empty());
    private final ReadOnlyObjectWrapper<List<PoseMessage>> messages = new ReadOnlyObjectWrapper<>(List.of());
    private final ReadOnlyObjectWrapper<List<JointRow>> rows = new ReadOnlyObjectWrapper<>(List.of());
    private Optional<PoseSheet> sheet = Optional.empty();
    private Optional<SolvedPose> start = Optional.empty();
    private int generation;

    /** @param inside what goes through what; not looked for while a joint is in hand */
    private record Answer(SolvedPose pose, Optional<SolvedPose> start, List<Penetration> inside) {}

    /**
     * @param frame the keyframe in work
     * @param inHand what is turned and not yet written
     * @param failed gets why nothing could be solved
     */
    PoseSolving(
            Draft draft,
            Words words,
            Background background,
            ObservableValue<PoseFrame> frame,
            Supplier<Optional<InHand>> inHand,
            Consumer<String> failed) {
        this.draft = draft;
        this.words = words;
        this.frame = frame;
        this.inHand = inHand;
        this.failed = failed;
        this.solving = new Lane(background);
    }

    ReadOnlyObjectWrapper<Optional<SolvedPose>> solved() {
        return solved;
    }

    ReadOnlyObjectWrapper<Optional<Skeleton>> skeleton() {
        return skeleton;
    }

    ReadOnlyObjectWrapper<List<PoseMessage>> messages() {
        return messages;
    }

    ReadOnlyObjectWrapper<List<JointRow>> rows() {
        return rows;
    }

    Optional<PoseSheet> sheet() {
        return sheet;
    }

    /** The keyframe as it is written; empty when it is not. */
    Optional<Pose> pose() {
        return sheet.flatMap(s -> s.pose(frame.getValue()));
    }

    /** Reads what is written. When it cannot be read the messages tell why. */
    void read() {
        Problems problems = new Problems();
        sheet = PoseText.read(draft.now(), problems);
        if (sheet.isEmpty()) {
            generation++;
            messages.set(problems.all().stream()
                    .map(p -> new PoseMessage(p, Optional.empty()))
                    .toList());
        }
    }

    /** Another keyframe comes; nothing of it is solved yet. */
    void forget() {
        solved.set(Optional.empty());
        skeleton.set(Optional.empty());
    }

    /** Solves the keyframe with what is in hand. */
    void solve() {
        Optional<Pose> written = pose();
        Optional<Pose> first =
                sheet.flatMap(s -> s.pose(PoseFrame.START)).filter(p -> frame.getValue() != PoseFrame.START);
        if (written.isEmpty()) {
            return;
        }
        Pose wanted = inHand.get().map(hand -> hand.in(written.get())).orElse(written.get());
        Optional<SolvedPose> known = start;
        int asked = ++generation;
        PoseFrame of = frame.getValue();
        boolean turning = inHand.get().isPresent();
        showRows();
        solving.run(
                () -> {
                    Optional<SolvedPose> before = known.filter(
                                    k -> first.filter(k.pose()::equals).isPresent())
                            .or(() -> first.map(PoseSolver::solve));
                    SolvedPose answer = PoseSolver.solve(wanted);
                    return new Answer(answer, before, turning ? List.of() : Penetrations.tooDeep(answer));
                },
                answer -> show(answer, of, asked),
                e -> failed.accept(words.text("pose.failed", String.valueOf(e.getMessage()))));
    }

    private void show(Answer answer, PoseFrame of, int asked) {
        if (of != frame.getValue()) {
            return;
        }
        start = answer.start;
        SolvedPose pose = answer.pose;
        solved.set(Optional.of(
                answer.start.isPresent() && pose.ghostBody().isEmpty()
                        ? pose.withGhost(answer.start.get().body())
                        : pose));
        if (asked == generation) {
            skeleton.set(Optional.of(pose.skeleton()));
            messages.set(messages(answer));
        }
        showRows();
    }

    private List<PoseMessage> messages(Answer answer) {
        SolvedPose pose = answer.pose;
        List<PoseMessage> all = new ArrayList<>();
        List<SolvedPose.MovedAngle> moved = new ArrayList<>(pose.moved());
        for (Problem problem : pose.problems()) {
            boolean isMove = problem.severity() == Problem.Severity.WARNING && !moved.isEmpty();
            all.add(new PoseMessage(problem, isMove ? Optional.of(moved.remove(0)) : Optional.empty()));
        }
        for (Penetration penetration : answer.inside) {
            all.add(new PoseMessage(
                    Problem.warning(
                            pose.pose().file(),
                            pose.pose().line(),
                            penetration.words(),
                            words.text("pose.inside.remedy")),
                    Optional.empty()));
        }
        return all;
    }

    private void showRows() {
        pose().ifPresent(pose -> rows.set(new JointTable(
                        pose,
                        inHand.get().map(InHand::angles).orElse(pose.angles()),
                        solved.get(),
                        inHand.get().map(InHand::motions).orElse(Set.of()),
                        motion -> PoseText.isSplit(draft.now(), frame.getValue(), motion))
                .rows()));
    }
}
