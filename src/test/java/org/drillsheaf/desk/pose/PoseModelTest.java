package org.drillsheaf.desk.pose;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.assertj.core.data.Offset;
import org.drillsheaf.Problems;
import org.drillsheaf.Side;
import org.drillsheaf.YamlDocument;
import org.drillsheaf.desk.drill.Draft;
import org.drillsheaf.desk.words.Words;
import org.drillsheaf.desk.work.SameThread;
import org.drillsheaf.figure.body.Motion;
import org.drillsheaf.figure.body.Vec3;
import org.drillsheaf.figure.draw.View;
import org.drillsheaf.figure.pose.PoseFrame;
import org.drillsheaf.figure.pose.SolvedPose;
import org.junit.jupiter.api.Test;

class PoseModelTest {
    private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
    private static final String POSE =
            """
            id: test
            pose:
              views: [side]
              start:
                root: standing
                joints:
                  hip: {flex: 10}
                  knee.R: {flex: 20}   # the right one
                  knee.L: {flex: 5}
              move:
                from: start
                joints:
                  elbow: {flex: 30}
            """;

    private final Draft draft = draft(POSE);
    private final PoseModel model = new PoseModel(draft, Words.in("en"), new SameThread());

    @Test
    void aJointIsWrittenWhereItsAuthorWroteIt() {
        assertThat(model.set(Motion.HIP_FLEX, Optional.empty(), 40)).isTrue();
        assertThat(model.set(Motion.KNEE_FLEX, Optional.of(Side.RIGHT), 60)).isTrue();

        assertThat(draft.now().text())
                .isEqualTo(POSE.replace("flex: 10", "flex: 40").replace("flex: 20", "flex: 60"));
        assertThat(row(Motion.KNEE_FLEX, Side.RIGHT).whole()).isEqualTo(60);
        assertThat(model.solved().get().orElseThrow().angle(Motion.KNEE_FLEX, Side.RIGHT))
                .isEqualTo(60);
        model.draft().undo();
        model.draft().undo();
        assertThat(draft.now().text()).isEqualTo(POSE);
    }

    @Test
    void whatNoBodyCanDoIsRefusedWithJointAndLimit() {
        assertThat(model.set(Motion.KNEE_FLEX, Optional.of(Side.LEFT), 170)).isFalse();

        assertThat(model.refusal().get())
                .contains("Knee left, bend: 170° is beyond what a body can do. From −15° to 155°.");
        assertThat(draft.changed().get()).isFalse();
    }

    @Test
    void aPulledJointFollowsThePointerAndIsWrittenAsWholeDegrees() {
        SolvedPose body = model.solved().get().orElseThrow();
        Vec3 ankle = body.point("ankle.R");
        Grip.At grip = new Grip.At(Grip.ANKLE, Optional.of(Side.RIGHT));

        model.pulling(grip, View.SIDE, View.SIDE.across(ankle) - .1, View.SIDE.upward(ankle) + .05);
        model.pulling(grip, View.SIDE, View.SIDE.across(ankle) - .2, View.SIDE.upward(ankle) + .1);
        assertThat(draft.changed().get()).as("written before it was let go").isFalse();
        double shown = model.skeleton().get().orElseThrow().point("ankle.R").x();
        model.turned();

        Vec3 moved = model.solved().get().orElseThrow().point("ankle.R");
        assertThat(moved.x()).isCloseTo(ankle.x() - .2, Offset.offset(.04));
        assertThat(shown).isCloseTo(moved.x(), Offset.offset(.005));
        assertThat(draft.now().at("/pose/start/joints/knee.R/flex").isInt()).isTrue();
        assertThat(draft.now().at("/pose/start/joints/knee.R/flex").intValue()).isGreaterThan(30);
        assertThat(draft.now().at("/pose/start/joints/knee.L/flex").intValue()).isEqualTo(5);
        assertThat(draft.undoable().get().orElseThrow()).startsWith("Knee right");
        draft.undo();
        assertThat(draft.now().text()).isEqualTo(POSE);
        draft.redo();
        assertThat(draft.now().at("/pose/start/joints/knee.R/flex").intValue()).isGreaterThan(30);
    }

    @Test
    void aPullNeverPassesALimit() {
        Vec3 knee = model.solved().get().orElseThrow().point("knee.R");
        Grip.At grip = new Grip.At(Grip.ANKLE, Optional.of(Side.RIGHT));

        model.pulling(grip, View.SIDE, knee.x() + .3, knee.y() + .1);
        model.turned();

        assertThat(row(Motion.KNEE_FLEX, Side.RIGHT).whole()).isEqualTo(-15);
    }

    @Test
    void aKeyframeWritesOnlyWhatIsItsOwn() {
        model.frame().set(PoseFrame.MOVE);
        model.set(Motion.HIP_FLEX, Optional.empty(), 70);

        assertThat(draft.now().at("/pose/start/joints/hip/flex").intValue()).isEqualTo(10);
        assertThat(draft.now().at("/pose/move/joints/hip/flex").intValue()).isEqualTo(70);
        model.addFrame(PoseFrame.END);
        assertThat(draft.now().at("/pose/end/from").textValue()).isEqualTo("move");
        assertThat(model.frame().get()).isEqualTo(PoseFrame.END);
        assertThat(row(Motion.HIP_FLEX).whole()).isEqualTo(70);
        model.step(-1);
        assertThat(model.frame().get()).isEqualTo(PoseFrame.MOVE);
        model.removeFrame(PoseFrame.END);
        assertThat(model.frames()).containsExactly(PoseFrame.START, PoseFrame.MOVE);
    }

    @Test
    void aTouchMovesAnAngleAndTheModelSaysByHowMuch() {
        PoseModel drill = new PoseModel(draft(library("wall-march")), Words.in("en"), new SameThread());
        JointRow touched = drill.rows().get().stream()
                .filter(JointRow::byTouch)
                .filter(r -> !r.motion().joint().equals("ankle"))
                .findFirst()
                .orElseThrow();

        drill.turning(touched.motion(), touched.side(), touched.degrees() + 25);
        drill.turned();

        PoseMessage message = drill.messages().get().stream()
                .filter(m -> m.fix().isPresent())
                .findFirst()
                .orElseThrow();
        assertThat(message.problem().what()).startsWith("The contacts moved");
        drill.takeSolved(message.fix().orElseThrow());
        assertThat(drill.messages().get()).isEmpty();
        drill.set(touched.motion(), touched.side(), touched.whole());
        assertThat(drill.rows().get().stream()
                        .filter(r -> r.isSame(touched))
                        .findFirst()
                        .orElseThrow()
                        .byTouch())
                .as("typed values are held")
                .isFalse();
    }

    @Test
    void anImpossibleTouchIsToldWithTheJointAtItsLimit() {
        model.setItem(
                "props", 0, JSON.objectNode().set("wall", JSON.objectNode().put("x", .6)));
        model.setItem(
                "contacts",
                0,
                JSON.objectNode().put("place", "toe.R").put("x", .6).put("y", .9));
        YamlDocument freed =
                draft.now().with("/pose/start/solve", JSON.arrayNode().add("knee.R.flex"));
        draft.change("solve", "solve", freed);

        assertThat(model.messages().get()).anySatisfy(m -> {
            assertThat(m.stops()).isTrue();
            assertThat(m.problem().what())
                    .contains("The place of toe.R misses by")
                    .contains("knee.R.flex, -15°, is at its limit");
        });
    }

    @Test
    void anItemThatCannotBeIsRefusedAndNothingChanges() {
        assertThat(model.setItem(
                        "contacts", 0, JSON.objectNode().put("touch", "feet").put("plane", "ceiling")))
                .isFalse();
        assertThat(model.refusal().get().orElseThrow()).startsWith("There is no surface “ceiling” in this pose");
        assertThat(draft.changed().get()).isFalse();

        assertThat(model.setItem(
                        "contacts", 0, JSON.objectNode().put("touch", "feet").put("plane", "floor")))
                .isTrue();
        assertThat(model.removeItem("contacts", 0)).isTrue();
        draft.undo();
        assertThat(model.list("contacts").size()).isEqualTo(1);
    }

    @Test
    void mirroredTwiceIsTheSameFile() {
        model.mirror();
        assertThat(row(Motion.KNEE_FLEX, Side.LEFT).whole()).isEqualTo(20);
        assertThat(draft.now().at("/pose/views/0").textValue()).isEqualTo("far-side");
        model.mirror();
        assertThat(draft.now().node().json()).isEqualTo(draft(POSE).now().node().json());
    }

    @Test
    void sidesGoApartOnlyWhenTold() {
        model.split(Motion.HIP_FLEX);
        model.set(Motion.HIP_FLEX, Optional.of(Side.LEFT), 33);

        assertThat(row(Motion.HIP_FLEX, Side.RIGHT).whole()).isEqualTo(10);
        assertThat(row(Motion.HIP_FLEX, Side.LEFT).whole()).isEqualTo(33);
    }

    private JointRow row(Motion motion) {
        return model.rows().get().stream()
                .filter(r -> r.motion() == motion && r.side().isEmpty())
                .findFirst()
                .orElseThrow();
    }

    private JointRow row(Motion motion, Side side) {
        return model.rows().get().stream()
                .filter(r -> r.motion() == motion && r.side().equals(Optional.of(side)))
                .findFirst()
                .orElseThrow();
    }

    static Draft draft(String text) {
        return new Draft(YamlDocument.of("test.yaml", text, new Problems()).orElseThrow());
    }

    static String library(String drill) {
        try {
            return Files.readString(Path.of("exercise-library", drill + ".yaml"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
