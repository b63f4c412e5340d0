package org.drillsheaf.exchange;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.Collection;
import java.util.List;
import org.drillsheaf.Problem;
import org.drillsheaf.drill.library.ProjectFiles;
import org.jspecify.annotations.Nullable;

/**
 * Writes an import into the clinic's own folder of drills: all of it or nothing. A whole new folder is made beside the old
 * one and takes its place at the end.
 *
 * @param drills the folder, {@code exercise-library} in the clinic's own; it need not be there yet
 */
public record HouseFolder(Path drills) {

    /**
     * Writes the files of the changes.
     *
     * @return why nothing was written; empty when everything was
     */
    public List<Problem> apply(Collection<DrillChange> changes) {
        Path fresh = drills.resolveSibling("." + drills.getFileName() + ".new");
        Path before = drills.resolveSibling(ProjectFiles.nameBefore(drills));
        try {
            Files.createDirectories(drills);
            if (Files.isSymbolicLink(drills)) {
                return List.of(Problem.error(
                        drills.toString(),
                        0,
                        "The clinic's folder of drills is a link to another folder",
                        "Name the folder that it points at with --house"));
            }
            remove(fresh);
            copy(drills, fresh);
            for (DrillChange change : changes) {
                Path file = fresh.resolve(change.id() + ".yaml");
                if (change.file().isPresent()) {
                    Files.writeString(file, change.file().get());
                } else {
                    Files.deleteIfExists(file);
                }
            }
            swap(fresh, before);
            return List.of();
        } catch (IOException e) {
            removeQuietly(fresh);
            return List.of(Problem.error(
                    drills.toString(),
                    0,
                    "The clinic's folder cannot be written (" + reason(e) + "), so it was left as it was",
                    "Free some space, or change the permissions of the folder, and import again"));
        }
    }

    private void swap(Path fresh, Path before) throws IOException {
        remove(before);
        Files.move(drills, before, StandardCopyOption.ATOMIC_MOVE);
        try {
            Files.move(fresh, drills, StandardCopyOption.ATOMIC_MOVE);
        } catch (IOException e) {
            Files.move(before, drills, StandardCopyOption.ATOMIC_MOVE);
            throw e;
        }
        removeQuietly(before);
    }

    private static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "nothing may be written there";
        }
        return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    }

    private static void copy(Path from, Path to) throws IOException {
        Files.walkFileTree(from, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes attributes) throws IOException {
                Files.createDirectories(to.resolve(from.relativize(folder)));
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.copy(
                        file,
                        to.resolve(from.relativize(file)),
                        LinkOption.NOFOLLOW_LINKS,
                        StandardCopyOption.COPY_ATTRIBUTES);
                return FileVisitResult.CONTINUE;
            }
        });
    }

    private static void remove(Path folder) throws IOException {
        if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
            return;
        }
        Files.walkFileTree(folder, new SimpleFileVisitor<>() {
            @Override
            public FileVisitResult visitFile(Path file, BasicFileAttributes attributes) throws IOException {
                Files.delete(file);
                return FileVisitResult.CONTINUE;
            }

            @Override
            public FileVisitResult postVisitDirectory(Path visited, @Nullable IOException failure) throws IOException {
                Files.delete(visited);
                return FileVisitResult.CONTINUE;
            }
        });
    }

    private static void removeQuietly(Path folder) {
        try {
            remove(folder);
        } catch (IOException e) {
            // It has a name of its own, is never read, and the next import removes it.
        }
    }
}
