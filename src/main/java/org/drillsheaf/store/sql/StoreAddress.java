package org.drillsheaf.store.sql;

import java.nio.file.Path;
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
    }

    /** A file, or an address that begins with {@code jdbc:postgresql:} and may name its user as {@code user=…}. */
    static StoreAddress of(String text) {
        if (!text.startsWith("jdbc:")) {
            return new File(Path.of(text));
        }
        java.util.regex.Matcher user = Pattern.compile("[?&]user=([^&]*)").matcher(text);
        return new Server(
                text,
                user.find()
                        ? java.net.URLDecoder.decode(user.group(1), java.nio.charset.StandardCharsets.UTF_8)
                        : "drillsheaf");
    }
}
