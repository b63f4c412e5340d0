package org.drillsheaf.exchange.archive;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.drillsheaf.Problems;
import org.drillsheaf.YamlNode;
import org.drillsheaf.figure.draw.Annotations;
import org.drillsheaf.figure.draw.DrawingStyle;
import org.drillsheaf.figure.draw.DrawingSvg;
import org.drillsheaf.figure.draw.FigureDrawer;
import org.drillsheaf.figure.draw.View;
import org.drillsheaf.figure.draw.ViewChooser;
import org.drillsheaf.figure.pose.PoseFrame;
import org.drillsheaf.figure.pose.PoseSheetReader;
import org.drillsheaf.figure.pose.SolvedPose;
import org.drillsheaf.figure.pose.SolvedSheet;

/** The pictures of a drill for those who open an archive without the program; they are never read back. */
public final class ArchivePictures {
    /** Scale, millimetres a stature. */
    private static final double SCALE = 46;

    private final FigureDrawer drawer;

    public ArchivePictures(FigureDrawer drawer) {
        this.drawer = drawer;
    }

    /** Every keyframe in the drill's first view, as SVG; nothing for a pose that cannot be read. */
    Map<PoseFrame, String> of(YamlNode drill) {
        Map<PoseFrame, String> pictures = new LinkedHashMap<>();
        Optional<SolvedSheet> sheet = drill.get("pose")
                .flatMap(pose -> PoseSheetReader.read(pose, new Problems()))
                .map(read -> read.solve());
        sheet.ifPresent(solved -> solved.poses().forEach((frame, pose) -> pictures.put(frame, draw(solved, pose))));
        return pictures;
    }

    private String draw(SolvedSheet sheet, SolvedPose pose) {
        View view = sheet.sheet().views().stream()
                .findFirst()
                .flatMap(View::parse)
                .orElseGet(() -> ViewChooser.choose(pose));
        return DrawingSvg.write(drawer.draw(pose, view, DrawingStyle.paper(SCALE), Annotations.NONE));
    }
}
