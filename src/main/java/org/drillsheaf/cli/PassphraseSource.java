package org.drillsheaf.cli;

import java.io.Console;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.drillsheaf.store.sql.Passphrase;
import org.jspecify.annotations.Nullable;

/**
 * Where a passphrase comes from. Never from the command line, where every user of the machine can read it, and never from a
 * variable of the environment, which every child process inherits and some systems show to others. What is left: asking, and a
 * file or an open descriptor that only its owner can read.
 */
final class PassphraseSource {
    private static final int LEAST_LETTERS = 12;
    private static final int MOST_BYTES = 4_096;
    private static final Set<PosixFilePermission> OTHERS = EnumSet.of(
            PosixFilePermission.GROUP_READ,
            PosixFilePermission.GROUP_WRITE,
            PosixFilePermission.OTHERS_READ,
            PosixFilePermission.OTHERS_WRITE);

    private PassphraseSource() {}

    /** Asks on the terminal, without showing what is typed. */
    static Passphrase ask(String question) {
        Console console = System.console();
        if (console == null) {
            throw BadInput.because(
                    "passphrase", "There is no terminal to ask on", "Hand it over with --passphrase-file");
        }
        return take(console.readPassword("%s: ", question));
    }

    /** A new one: long enough, and typed twice when it is asked for. */
    static Passphrase fresh(Optional<Path> file, String question) {
        if (file.isPresent()) {
            return longEnough(read(file.get()));
        }
        Passphrase first = longEnough(ask(question));
        try (Passphrase second = ask("Once more")) {
            if (!first.says(second)) {
                first.close();
                throw BadInput.because("passphrase", "The two were not the same", "Try again; nothing was changed");
            }
        }
        return first;
    }

    private static Passphrase longEnough(Passphrase passphrase) {
        if (passphrase.length() < LEAST_LETTERS) {
            passphrase.close();
            throw BadInput.because(
                    "passphrase",
                    "It is shorter than " + LEAST_LETTERS + " letters",
                    "Take five or six words that you can remember and nobody would guess");
        }
        return passphrase;
    }

    /** The first line of a file that only its owner may read, or of an open descriptor. */
    static Passphrase read(Path file) {
        try {
            if (Files.isRegularFile(file) && isReadByOthers(file)) {
                throw BadInput.because(
                        file.toString(), "Others may read this file", "Take the right from them: chmod 600 " + file);
            }
            byte[] bytes;
            try (var in = Files.newInputStream(file)) {
                bytes = in.readNBytes(MOST_BYTES);
            }
            CharBuffer text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes));
            Arrays.fill(bytes, (byte) 0);
            int end = 0;
            while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
                end++;
            }
            char[] line = new char[end];
            text.get(line);
            Arrays.fill(text.array(), '\0');
            return take(line);
        } catch (CharacterCodingException e) {
            throw BadInput.because(file.toString(), "The file is not UTF-8 text", "Save it again with UTF-8");
        } catch (IOException e) {
            throw BadInput.because(file.toString(), "The passphrase cannot be read", "Check the name and the rights");
        }
    }

    private static boolean isReadByOthers(Path file) throws IOException {
        try {
            return Files.getPosixFilePermissions(file).stream().anyMatch(OTHERS::contains);
        } catch (UnsupportedOperationException e) {
            return false; // Windows keeps a file in a user's folder from others by the folder's rights
        }
    }

    private static Passphrase take(char @Nullable [] letters) {
        try {
            if (letters == null || letters.length == 0) {
                throw BadInput.because("passphrase", "It is empty", "Type it, or write it on the first line");
            }
            return Passphrase.of(letters);
        } finally {
            if (letters != null) {
                Arrays.fill(letters, '\0');
            }
        }
    }
}
