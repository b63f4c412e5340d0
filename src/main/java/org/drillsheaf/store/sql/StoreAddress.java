package org.drillsheaf.store.sql;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where a record lies. */
public sealed interface StoreAddress {

    /** What to call it in a message; holds no secret. */
    String shown();

    /**
     * One encrypted H2 file.
     *
     * @param file ends in {@code .mv.db}
     */
    record File(Path file) implements StoreAddress {
        public static final String SUFFIX = ".mv.db";

        public File {
            if (!file.getFileName().toString().endsWith(SUFFIX)) {
                file = file.resolveSibling(file.getFileName() + SUFFIX);
            }
            file = file.toAbsolutePath().normalize();
        }

        @Override
        public String shown() {
            return file.toString();
        }

        /** Where the record of whoever runs this process lies. */
        public static File ofUser() {
            return ofUser(
                    System.getProperty("os.name", ""), Path.of(System.getProperty("user.home", "")), System.getenv());
        }

        /**
         * Where the record of this user lies, by the custom of the platform: {@code $XDG_DATA_HOME} or {@code ~/.local/share}
         * on Linux, {@code ~/Library/Application Support} on macOS, {@code %APPDATA%} on Windows.
         *
         * @param system name of the operating system
         * @param environment variables of the process
         */
        public static File ofUser(String system, Path home, Map<String, String> environment) {
            Path data;
            if (system.startsWith("Windows")) {
                data = folder(environment, "APPDATA")
                        .orElse(home.resolve("AppData").resolve("Roaming"));
            } else if (system.startsWith("Mac")) {
                data = home.resolve("Library").resolve("Application Support");
            } else {
                data = folder(environment, "XDG_DATA_HOME")
                        .orElse(home.resolve(".local").resolve("share"));
            }
            return new File(data.resolve("drillsheaf").resolve("record"));
        }

        private static Optional<Path> folder(Map<String, String> environment, String variable) {
            return Optional.ofNullable(environment.get(variable))
                    .filter(value -> !value.isBlank())
                    .map(Path::of);
        }

        /** The folder that it lies in. */
        public Path folder() {
            return Objects.requireNonNull(file.getParent(), "an absolute path of a file has a folder");
        }

        /** A file beside it, for example {@code record-2026-backup.mv.db}. */
        public File beside(String words) {
            String name = file.getFileName().toString();
            return new File(
                    file.resolveSibling(name.substring(0, name.length() - SUFFIX.length()) + "-" + words + SUFFIX));
        }

        /** The path as H2 wants it, without its suffix. */
        String base() {
            String path = file.toString();
            return path.substring(0, path.length() - SUFFIX.length());
        }
    }

    /**
     * A PostgreSQL server.
     *
     * @param url a JDBC address with its options, for example
     *     {@code jdbc:postgresql://db.clinic.example/drillsheaf?sslmode=verify-full}; never with a password
     * @param user the database's user
     */
    record Server(String url, String user) implements StoreAddress {
        /** The driver takes {@code //host:port/database}, or a database on this machine alone. */
        private static final Pattern PARTS = Pattern.compile("jdbc:postgresql:(?://([^/?]*))?/?([^?]*).*");

        private static final Pattern SECRET = Pattern.compile("(?i)[?&](password|sslpassword)=|//[^/@]*:[^/@]*@");

        public Server {
            if (!url.startsWith("jdbc:postgresql:")) {
                throw new StoreFailure(
                        StoreFailure.Kind.REFUSED,
                        "the address of the store",
                        "This is no address of a PostgreSQL database",
                        "Write it as jdbc:postgresql://host/database");
            }
            if (SECRET.matcher(url).find()) {
                throw new StoreFailure(
                        StoreFailure.Kind.REFUSED,
                        "the address of the store",
                        "The address holds a password, where everybody on this machine can read it",
                        "Take it out; the password is handed over by itself");
            }
        }

        @Override
        public String shown() {
            int options = url.indexOf('?');
            return options < 0 ? url : url.substring(0, options);
        }

        /** The machine, with its port where one is given; several with commas between them; empty for this machine. */
        public Optional<String> host() {
            return Optional.ofNullable(parts().group(1)).filter(host -> !host.isEmpty());
        }

        /** The database; named like its user where the address has none. */
        public String database() {
            String named = parts().group(2);
            return named.isEmpty() ? user : decoded(named);
        }

        private Matcher parts() {
            Matcher parts = PARTS.matcher(url);
            parts.matches();
            return parts;
        }
    }

    /** A file, or an address that begins with {@code jdbc:postgresql:} and may name its user as {@code user=…}. */
    static StoreAddress of(String text) {
        if (!text.startsWith("jdbc:")) {
            return new File(Path.of(text));
        }
        Matcher user = Pattern.compile("[?&]user=([^&]*)").matcher(text);
        return new Server(text, user.find() ? decoded(user.group(1)) : "drillsheaf");
    }

    private static String decoded(String part) {
        return URLDecoder.decode(part, StandardCharsets.UTF_8);
    }
}
