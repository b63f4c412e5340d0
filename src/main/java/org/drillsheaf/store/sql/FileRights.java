package org.drillsheaf.store.sql;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Optional;
import java.util.Set;

/** Who may read a file of the record. Where the disk knows no such rights, nothing happens. */
final class FileRights {
    private FileRights() {}

    /** Makes a file that was just written its owner's alone. */
    static void ownerOnly(Path file) throws IOException {
        give(file, PosixFilePermissions.fromString("rw-------"));
    }

    static Optional<Set<PosixFilePermission>> of(Path file) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        return view == null
                ? Optional.empty()
                : Optional.of(view.readAttributes().permissions());
    }

    static void give(Path file, Set<PosixFilePermission> rights) throws IOException {
        PosixFileAttributeView view = Files.getFileAttributeView(file, PosixFileAttributeView.class);
        if (view != null) {
            view.setPermissions(rights);
        }
    }
}
