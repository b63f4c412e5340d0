package org.drillsheaf.figure.draw;

import static org.assertj.core.api.Assertions.assertThat;

import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.figure.body.BodyBuild;
import org.drillsheaf.figure.pose.PoseReader;
import org.drillsheaf.figure.pose.PoseSheetReader;
import org.drillsheaf.figure.pose.PoseSolver;
import org.drillsheaf.figure.pose.SolvedPose;
import org.drillsheaf.figure.pose.SolvedSheet;

/** A few poses that between them show every kind of mark and contact. */
final class ExamplePoses {
    static final String WALL_LEAN =
            """
            root: standing
            joints:
              pelvis: {tilt: -14}
              spine: {lumbar: 14, thoracic: 34}
              neck: {flex: -8}
              head: {nod: -16}
              hip: {flex: 20, abd: 4}
              knee: {flex: 26}
              scapula: {protract: 22}
              shoulder: {from-trunk: 50, abd: 4, int: -20}
              elbow: {flex: 6, pron: -75}
            props:
              - wall: {x: 0, faces: +x, height: 0.98}
              - floor: {from: -0.018, to: 0.52}
            contacts:
              - {touch: low-back, plane: wall}
              - {flat: feet, plane: floor}
              - {touch: feet, plane: floor}
              - {place: heel.R, x: 0.16}
            solve: [root.x, root.y, hip.flex]
            feel: [obliques, hamstrings]
            marks:
              - {id: reach, arrow: {at: tip.R, dir: [0.77, -0.64, 0], len: 0.12, label: reach}}
              - {id: weight, arrow: {at: heel.R, dir: [0, -1, 0], len: 0.10, gap: 0.025}}
              - {id: bend, angle: {at: shoulder.R, r: 10}}
              - {id: press, pad: {at: "trunk@0.42,180", along: v, w: 6}}
              - {id: breath, breath: {way: out}}
            """;

    static final String SIDE_LYING_LIFT =
            """
            root: side-lying-left
            joints:
              hip.R: {abd: 30, flex: -4}
              hip.L: {flex: 42}
              knee.L: {flex: 70}
              shoulder.L: {flex: 118, abd: -10, int: 20}
              elbow.L: {flex: 112, pron: -40}
              shoulder.R: {flex: 46, abd: -6, int: 62}
              elbow.R: {flex: 62, pron: 80}
            props:
              - floor: {from: -0.56, to: 0.56}
            contacts:
              - {touch: trunk, plane: floor}
            solve: [root.y]
            ghost: {hip.R.abd: 2}
            feel: [glute-med.R]
            marks:
              - {id: lift, swing: {about: hip.R, at: ankle.R, k: 0.97}}
            """;

    static final String STANDING =
            """
            root: standing
            joints:
              hip.R: {flex: 24}
              knee.R: {flex: 38}
              shoulder.L: {flex: 40, abd: 12}
              elbow.L: {flex: 30}
              neck: {turn: 20}
            """;

    private ExamplePoses() {}

    static SolvedPose solved(String yaml) {
        return solved(yaml, BodyBuild.AVERAGE);
    }

    static SolvedPose solved(String yaml, BodyBuild build) {
        Problems problems = new Problems();
        SolvedPose pose = YamlNode.parse("pose.yaml", yaml, problems)
                .flatMap(node -> PoseReader.read(node, problems))
                .map(read -> PoseSolver.solve(read, build))
                .orElseThrow(() -> new AssertionError(problems.all()));
        assertThat(pose.residual()).isLessThan(0.003);
        return pose;
    }

    static SolvedSheet sheet(String yaml) {
        Problems problems = new Problems();
        return YamlNode.parse("pose.yaml", yaml, problems)
                .flatMap(node -> PoseSheetReader.read(node, problems))
                .orElseThrow(() -> new AssertionError(problems.all()))
                .solve();
    }
}
