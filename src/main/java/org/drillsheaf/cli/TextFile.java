package org.drillsheaf.cli;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import org.drillsheaf.YamlNode;

/** Reads and writes whole files, and says in one sentence why that did not work. Never leaves a half-written file. */
final class TextFile {
    private TextFile() {}

    static String read(Path file) {
        try {
            if (Files.isDirectory(file)) {
                throw BadInput.because(file.toString(), "This is a folder", "Name a YAML file");
            }
            if (Files.size(file) > 4L * YamlNode.LARGEST_FILE) {
                throw BadInput.because(file.toString(), "The file is too large", "Check that it is the right one");
            }
            return StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(Files.readAllBytes(file)))
                    .toString();
        } catch (NoSuchFileException e) {
            throw BadInput.because(file.toString(), "There is no such file", "Check the name and the folder");
        } catch (AccessDeniedException e) {
            throw BadInput.because(file.toString(), "The file may not be read", "Change its permissions");
        } catch (CharacterCodingException e) {
            throw BadInput.because(
                    file.toString(), "The file is not UTF-8 text", "Save it again with the encoding UTF-8");
        } catch (IOException e) {
            throw BadInput.because(
                    file.toString(), "The file cannot be read (" + e.getMessage() + ")", "Check the disk");
        }
    }

    static void makeFolder(Path folder) {
        try {
            Files.createDirectories(folder);
            if (!Files.isWritable(folder)) {
                throw BadInput.because(
                        folder.toString(), "Nothing may be written in this folder", "Choose another with --out");
            }
        } catch (FileAlreadyExistsException e) {
            throw BadInput.because(
                    folder.toString(), "This is a file, not a folder", "Choose another folder with --out");
        } catch (AccessDeniedException e) {
            throw BadInput.because(folder.toString(), "The folder cannot be made here", "Choose another with --out");
        } catch (IOException e) {
            throw BadInput.because(
                    folder.toString(),
                    "The folder cannot be made (" + e.getMessage() + ")",
                    "Choose another with --out");
        }
    }

    /** Something that writes a file piece by piece. */
    interface Content {
        void writeTo(OutputStream out) throws IOException;
    }

    /** Writes beside the target first and then moves, so that a full disk or a kill leaves the old file or none. */
    static void write(Path file, byte[] bytes) {
        write(file, out -> out.write(bytes));
    }

    /** The same for a file that need not lie in memory. */
    static void write(Path file, Content content) {
        Path part = file.resolveSibling("." + file.getFileName() + ".part");
        try {
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(part))) {
                content.writeTo(out);
            }
            try {
                Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
            } catch (AtomicMoveNotSupportedException e) {
                Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
            }
        } catch (IOException e) {
            removeQuietly(part);
            throw BadInput.because(
                    file.toString(),
                    "The file cannot be written (" + reason(e) + ")",
                    "Free some space or choose another folder with --out");
        }
    }

    /** The same for a file that only its owner may read. */
    static void writePrivately(Path file, byte[] bytes) {
        Path part = file.resolveSibling("." + file.getFileName() + ".part");
        try {
            removeQuietly(part);
            Files.createFile(part, ownersOnly(file));
            write(file, bytes);
        } catch (IOException e) {
            throw BadInput.because(
                    file.toString(),
                    "The file cannot be written (" + reason(e) + ")",
                    "Choose another folder with --out");
        }
    }

    private static FileAttribute<?>[] ownersOnly(Path file) {
        return file.getFileSystem().supportedFileAttributeViews().contains("posix")
                ? new FileAttribute<?>[] {
                    PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
                }
                : new FileAttribute<?>[0];
    }

    private static String reason(IOException e) {
        String message = e.getMessage();
        return message == null ? e.getClass().getSimpleName() : message;
    }

    /** Removes a file that was only half made. */
    static void removeQuietly(Path part) {
        try {
            Files.deleteIfExists(part);
        } catch (IOException e) {
            // The first failure is the one worth telling; the part file has a name of its own and harms nothing.
        }
    }
}
