package org.drillsheaf.desk.start;

import java.util.Optional;
import javafx.scene.image.Image;
import org.drillsheaf.Problems;
import org.drillsheaf.course.Folders;
import org.drillsheaf.desk.picture.Pictures;
import org.drillsheaf.drill.library.LibraryFiles;

/** The drawing on the first page: one drill of the catalogue, read by itself, because the rest is not read yet. */
public final class StartPicture {
    private static final String DRILL = "wall-lean-breath";

    private StartPicture() {}

    /** Blocks for about a second. */
    public static Optional<Image> draw(Folders folders) {
        return LibraryFiles.drill(folders.files(), DRILL, new Problems())
                .flatMap(d -> d.node().get("pose"))
                .flatMap(pose -> Pictures.draw(pose, false, Pictures.Size.LARGE));
    }
}
