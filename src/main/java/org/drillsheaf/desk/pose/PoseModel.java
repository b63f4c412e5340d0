package org.drillsheaf.desk.pose;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleObjectProperty;
import org.drillsheaf.Problem;
import org.drillsheaf.Problems;
import org.drillsheaf.Side;
import org.drillsheaf.YamlDocument;
import org.drillsheaf.desk.drill.Draft;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.desk.work.Background;
import org.drillsheaf.figure.body.JointAngles;
import org.drillsheaf.figure.body.JointLimits;
import org.drillsheaf.figure.body.Motion;
import org.drillsheaf.figure.body.Skeleton;
import org.drillsheaf.figure.draw.View;
import org.drillsheaf.figure.pose.Pose;
import org.drillsheaf.figure.pose.PoseFrame;
import org.drillsheaf.figure.pose.SolvedPose;
import org.drillsheaf.figure.pose.Unknown;

/**
 * The pose of a draft while it is turned. A pull or a slider first changes only the joints in hand: the skeleton follows at once,
 * the contacts are solved in the background, and the newest wins; {@link #turned()} writes whole degrees into the draft. For the
 * window's thread.
 */
public final class PoseModel {
    private final Draft draft;
    private final Words words;
    private final PoseSolving solving;
    private final ObjectProperty<PoseFrame> frame = new SimpleObjectProperty<>(PoseFrame.START);
    private final ObjectProperty<Optional<Grip.At>> selected = new SimpleObjectProperty<>(Optional.empty());
    private final ReadOnlyObjectWrapper<Optional<String>> refusal = new ReadOnlyObjectWrapper<>(Optional.empty());
    private Optional<InHand> inHand = Optional.empty();

    public PoseModel(Draft draft, Words words, Background background) {
        this.draft = draft;
        this.words = words;
        this.solving =
                new PoseSolving(draft, words, background, frame, () -> inHand, why -> refusal.set(Optional.of(why)));
        draft.document().addListener((of, before, now) -> read());
        frame.addListener((of, before, now) -> {
            settle();
            solving.forget();
            read();
        });
        read();
    }

    public Draft draft() {
        return draft;
    }

    /** The keyframe in work. */
    public ObjectProperty<PoseFrame> frame() {
        return frame;
    }

    /** The grip that the keys turn. */
    public ObjectProperty<Optional<Grip.At>> selected() {
        return selected;
    }

    /** The newest solved pose, with the start keyframe as its ghost; empty while there is none. */
    public ReadOnlyObjectProperty<Optional<SolvedPose>> solved() {
        return solving.solved().getReadOnlyProperty();
    }

    /** Bones that follow at once, before the contacts are solved. */
    public ReadOnlyObjectProperty<Optional<Skeleton>> skeleton() {
        return solving.skeleton().getReadOnlyProperty();
    }

    public ReadOnlyObjectProperty<List<PoseMessage>> messages() {
        return solving.messages().getReadOnlyProperty();
    }

    /** Why the last turn was not taken. */
    public ReadOnlyObjectProperty<Optional<String>> refusal() {
        return refusal.getReadOnlyProperty();
    }

    /** All movements of the keyframe, from the head down. */
    public ReadOnlyObjectProperty<List<JointRow>> rows() {
        return solving.rows().getReadOnlyProperty();
    }

    /** Keyframes that are written. */
    public List<PoseFrame> frames() {
        return solving.sheet().map(s -> List.copyOf(s.poses().keySet())).orElse(List.of());
    }

    /** A list of the keyframe, its own or the one it builds upon. */
    public JsonNode list(String key) {
        return PoseText.keyframe(draft.now(), frame.get()).path(key);
    }

    private Optional<Pose> pose() {
        return solving.pose();
    }

    private void read() {
        inHand = Optional.empty();
        solving.read();
        if (solving.sheet().isEmpty()) {
            return;
        }
        if (pose().isEmpty()) {
            frame.set(PoseFrame.START);
        } else {
            solving.solve();
        }
    }

    /**
     * Turns a joint as far as it goes, without writing it yet.
     *
     * @param side empty for both and for the middle
     */
    public void turning(Motion motion, Optional<Side> side, double degrees) {
        JointLimits.Limit limit = JointLimits.of(motion);
        double within = Math.max(limit.least(), Math.min(limit.most(), degrees));
        JointAngles angles =
                inHand.map(InHand::angles).or(() -> pose().map(Pose::angles)).orElse(JointAngles.STRAIGHT);
        take(
                side.isPresent() ? angles.with(motion, side.get(), within) : angles.with(motion, within),
                List.of(new InHand.Turn(motion, side)));
    }

    /** Pulls a grip towards a place of a view, without writing it yet. */
    public void pulling(Grip.At at, View view, double across, double upward) {
        Optional<SolvedPose> body = solved().get();
        if (body.isEmpty()) {
            return;
        }
        JointAngles now = body.get().skeleton().posture().angles();
        JointAngles current = inHand.map(hand -> hand.over(now)).orElse(now);
        List<Motion> motions = at.grip().pull(now, at.anySide());
        if (motions.isEmpty()) {
            return;
        }
        boolean both = at.side().isPresent() && motions.stream().noneMatch(m -> isApart(m));
        JointAngles pulled = new Pull(
                        body.get().skeleton().posture().withAngles(current),
                        body.get().skeleton().lengths(),
                        at.point(),
                        motions,
                        at.anySide(),
                        both,
                        view)
                .towards(across, upward);
        JointAngles angles =
                inHand.map(InHand::angles).or(() -> pose().map(Pose::angles)).orElse(now);
        List<InHand.Turn> turned = new ArrayList<>();
        for (Motion motion : motions) {
            Optional<Side> side = both || !motion.isPaired() ? Optional.empty() : at.side();
            double degrees = pulled.get(motion, at.anySide());
            angles = side.isPresent() ? angles.with(motion, side.get(), degrees) : angles.with(motion, degrees);
            turned.add(new InHand.Turn(motion, side));
        }
        take(angles, turned);
    }

    private boolean isApart(Motion motion) {
        return rows().get().stream()
                .anyMatch(r -> r.motion() == motion && r.side().isPresent());
    }

    private void take(JointAngles angles, List<InHand.Turn> turned) {
        refusal.set(Optional.empty());
        InHand hand = InHand.of(inHand, angles, turned);
        inHand = Optional.of(hand);
        solved().get().map(SolvedPose::skeleton).ifPresent(body -> {
            JointAngles over = hand.over(body.posture().angles());
            solving.skeleton().set(Optional.of(Skeleton.of(body.posture().withAngles(over), body.lengths())));
        });
        solving.solve();
    }

    /** Whether something is in hand that is not written yet. */
    public boolean isTurning() {
        return inHand.isPresent();
    }

    /** Writes what is in hand as whole degrees, as one step that can be taken back. */
    public void turned() {
        if (inHand.isEmpty()) {
            return;
        }
        InHand hand = inHand.get();
        InHand.Turn first = hand.turns().get(0);
        write(
                words.text("undo.joint", name(first.motion(), first.side())),
                "pose" + frame.get() + hand.turns(),
                hand.written(draft.now(), frame.get()));
    }

    /** Puts back what is in hand. */
    public void settle() {
        inHand = Optional.empty();
        draft.settle();
    }

    /**
     * Sets a joint to whole degrees. What the contacts had set is held from now on.
     *
     * @return whether it was taken; if not, {@link #refusal()} tells why
     */
    public boolean set(Motion motion, Optional<Side> side, long degrees) {
        JointLimits.Limit limit = JointLimits.of(motion);
        if (!limit.allows(degrees)) {
            refusal.set(Optional.of(words.text(
                    "pose.beyond", name(motion, side), number(degrees), number(limit.least()), number(limit.most()))));
            return false;
        }
        refusal.set(Optional.empty());
        YamlDocument held = PoseText.held(draft.now(), frame.get(), motion, side);
        write(
                words.text("undo.joint", name(motion, side)),
                "pose" + frame.get() + motion + side,
                PoseText.turned(held, frame.get(), motion, side, degrees));
        return true;
    }

    /** Lets the two sides of a movement go apart. */
    public void split(Motion motion) {
        Map<Side, Long> degrees = new EnumMap<>(Side.class);
        for (Side side : Side.values()) {
            degrees.put(
                    side,
                    pose().map(p -> Math.round(p.angles().get(motion, side))).orElse(0L));
        }
        write(
                words.text("undo.split", name(motion, Optional.empty())),
                "split",
                PoseText.split(draft.now(), frame.get(), motion, degrees));
    }

    /** Writes an angle as the contacts made it. */
    public void takeSolved(SolvedPose.MovedAngle moved) {
        write(
                words.text("undo.solved"),
                "solved",
                PoseText.turned(
                        draft.now(),
                        frame.get(),
                        moved.unknown().motion(),
                        moved.unknown().side(),
                        Math.round(moved.solved())));
    }

    /** Writes every angle that the contacts set. */
    public void takeAllSolved() {
        Optional<SolvedPose> body = solved().get();
        Optional<Pose> pose = pose();
        if (body.isEmpty() || pose.isEmpty()) {
            return;
        }
        YamlDocument next = draft.now();
        for (Unknown unknown : pose.get().solve()) {
            if (unknown instanceof Unknown.Angle angle) {
                double degrees = body.get()
                        .skeleton()
                        .posture()
                        .angles()
                        .get(angle.motion(), angle.side().orElse(Side.RIGHT));
                next = PoseText.turned(next, frame.get(), angle.motion(), angle.side(), Math.round(degrees));
            }
        }
        write(words.text("undo.solved"), "solved", next);
    }

    public void mirror() {
        write(words.text("undo.mirror"), "mirror", PoseText.mirrored(draft.now()));
    }

    /** Adds the keyframe and goes there. */
    public void addFrame(PoseFrame added) {
        write(words.text("undo.keyframe"), "keyframe", PoseText.withFrame(draft.now(), added));
        frame.set(added);
    }

    /** Takes a keyframe away; the start stays. */
    public void removeFrame(PoseFrame removed) {
        if (removed != PoseFrame.START) {
            frame.set(PoseFrame.START);
            write(words.text("undo.keyframe"), "keyframe", PoseText.withoutFrame(draft.now(), removed));
        }
    }

    /** Goes to the next or the last keyframe. */
    public void step(int by) {
        List<PoseFrame> all = frames();
        int at = all.indexOf(frame.get()) + by;
        if (at >= 0 && at < all.size()) {
            frame.set(all.get(at));
        }
    }

    /**
     * Puts another item into a list of the keyframe, or a new one behind the last.
     *
     * @param key {@code contacts}, {@code props} or {@code marks}
     * @return whether the pose can still be read; if not nothing is changed and {@link #refusal()} tells why
     */
    public boolean setItem(String key, int index, JsonNode item) {
        ArrayNode items = items(key);
        if (index < items.size()) {
            items.set(index, item);
        } else {
            items.add(item);
        }
        return replaced(key, key + index, items);
    }

    /** Takes an item from a list; refused while something else needs it. */
    public boolean removeItem(String key, int index) {
        ArrayNode items = items(key);
        if (index < 0 || index >= items.size()) {
            return false;
        }
        items.remove(index);
        boolean taken = replaced(key, key, items);
        if (taken) {
            draft.settle();
        }
        return taken;
    }

    /** Writes a list of the keyframe, unless the pose could not be read any more. */
    private boolean replaced(String key, String place, ArrayNode items) {
        YamlDocument next = PoseText.with(draft.now(), frame.get(), key, items);
        Problems problems = new Problems();
        if (PoseText.read(next, problems).isEmpty()) {
            Problem first = problems.all().get(0);
            refusal.set(Optional.of(first.what() + ". " + first.remedy() + "."));
            return false;
        }
        refusal.set(Optional.empty());
        write(words.text("undo." + key), place, next);
        return true;
    }

    private ArrayNode items(String key) {
        return list(key) instanceof ArrayNode list ? list.deepCopy() : JsonNodeFactory.instance.arrayNode();
    }

    private void write(String name, String place, YamlDocument next) {
        boolean same = next.text().equals(draft.now().text());
        draft.change(name, place, next);
        if (same && inHand.isPresent()) {
            inHand = Optional.empty();
            solving.solve();
        }
    }

    /** A movement in words, for example {@code Hip left, bend}. */
    public String name(Motion motion, Optional<Side> side) {
        String joint = words.text("joint." + motion.joint());
        String sided = side.map(s -> words.text("joint.side." + s.id(), joint)).orElse(joint);
        return words.text("joint.motion", sided, motionName(motion));
    }

    public String motionName(Motion motion) {
        return words.text("motion." + motion.joint() + "." + motion.movement());
    }

    /** Whole degrees with a real minus. */
    public static String number(double degrees) {
        long whole = Math.round(degrees);
        return whole < 0 ? "\u2212" + -whole : String.valueOf(whole);
    }
}
