package org.drillsheaf.store.sql;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.sql.SQLException;
import java.util.Locale;
import org.drillsheaf.store.sql.StoreFailure.Kind;
import org.jspecify.annotations.Nullable;

/** What an engine's complaint means to the person at the desk. */
public final class Complaints {
    private Complaints() {}

    /** Another transaction was in the way; trying again is right. */
    static boolean isInTheWay(Throwable failure) {
        SQLException cause = sqlCause(failure);
        if (cause == null) {
            return false;
        }
        String state = cause.getSQLState();
        int code = cause.getErrorCode();
        return isTooLongLocked(cause)
                || "40001".equals(state)
                || "40P01".equals(state)
                || "23505".equals(state) // two desks began the same row; the second try finds it
                || code == org.h2.api.ErrorCode.CONCURRENT_UPDATE_1
                || code == org.h2.api.ErrorCode.DEADLOCK_1;
    }

    /** A statement that waited for a lock until the engine ended it. */
    private static boolean isTooLongLocked(SQLException cause) {
        return "55P03".equals(cause.getSQLState()) || cause.getErrorCode() == org.h2.api.ErrorCode.LOCK_TIMEOUT_1;
    }

    /** The failure in words; one that has them already is left alone. */
    public static StoreFailure of(Throwable failure, StoreAddress address) {
        if (failure instanceof StoreFailure known) {
            return known;
        }
        return inWords(kind(failure, address), failure, address);
    }

    private static StoreFailure inWords(Kind kind, Throwable failure, StoreAddress address) {
        String place = address.shown();
        return switch (kind) {
            case IN_USE ->
                new StoreFailure(
                        kind,
                        place,
                        "The record is open in another window or program",
                        "Close that one first; meanwhile the newest backup can be looked into (the folder of backups"
                                + " lies beside the record)");
            case WRONG_PASSPHRASE ->
                address instanceof StoreAddress.File
                        ? new StoreFailure(
                                kind,
                                place,
                                "The passphrase does not open this record",
                                "Check capitals and keyboard layout and try again; the record cannot be opened without"
                                        + " it, a backup has the passphrase that was in use on its day. If it is"
                                        + " surely right, the beginning of the file is damaged: restore the newest"
                                        + " backup")
                        : new StoreFailure(
                                kind, place, "The server refuses this user or password", "Ask whoever runs the server");
            case DAMAGED ->
                new StoreFailure(
                        kind,
                        place,
                        "The record's file is damaged",
                        "Leave the file as it is and restore the newest backup: it is put in the file's place, and the"
                                + " damaged file is set aside, not removed");
            case NEWER ->
                new StoreFailure(
                        kind,
                        place,
                        "The record was written by a newer version",
                        "Install that version or a newer one; nothing was changed");
            case DISK_FULL ->
                new StoreFailure(
                        kind,
                        place,
                        "The disk is full; the last save was not kept, everything before it was",
                        "Free some space, close the record, open it and save again");
            case READ_ONLY ->
                new StoreFailure(
                        kind,
                        place,
                        "Nothing can be written there: the disk, folder or file is read-only",
                        "Allow writing to the folder and the file, or copy the file to a place where you may write");
            case SERVER_AWAY ->
                new StoreFailure(
                        kind,
                        place,
                        "The server does not answer",
                        "Check the network; what was saved before is safe, save again when the server is back");
            case BUSY ->
                new StoreFailure(
                        kind,
                        place,
                        "Somebody else is at work on the record, and did not make way in time; nothing was changed",
                        "Try again in a moment; if it stays so, close the program at the other desks first");
            case CLOSED ->
                new StoreFailure(
                        kind,
                        place,
                        "The record was closed in between",
                        "Open it again; save again what was not saved");
            default ->
                new StoreFailure(
                        Kind.UNEXPECTED,
                        place,
                        "The record could not do this (" + code(failure) + ")",
                        "Try again; if it happens again, report these two numbers");
        };
    }

    /** For a time when nothing can go wrong with a sound file: what would else be unexpected is then damage. */
    public static StoreFailure whileReadingAll(StoreFailure failure, StoreAddress address) {
        return failure.kind() == Kind.UNEXPECTED && address instanceof StoreAddress.File
                ? inWords(Kind.DAMAGED, failure, address)
                : failure;
    }

    private static Kind kind(Throwable failure, StoreAddress address) {
        for (Throwable t = failure; t != null; t = t.getCause()) {
            if (saysDiskFull(t)) {
                return Kind.DISK_FULL;
            }
        }
        SQLException cause = sqlCause(failure);
        if (cause == null) {
            return failure instanceof IOException && isReadOnly(failure) ? Kind.READ_ONLY : Kind.UNEXPECTED;
        }
        if (isTooLongLocked(cause)) {
            return Kind.BUSY;
        }
        return address instanceof StoreAddress.File ? ofH2(cause) : ofServer(cause);
    }

    private static Kind ofH2(SQLException cause) {
        return switch (cause.getErrorCode()) {
            case org.h2.api.ErrorCode.DATABASE_ALREADY_OPEN_1 -> Kind.IN_USE;
            case org.h2.api.ErrorCode.FILE_ENCRYPTION_ERROR_1, org.h2.api.ErrorCode.WRONG_USER_OR_PASSWORD ->
                Kind.WRONG_PASSPHRASE;
            case org.h2.api.ErrorCode.FILE_CORRUPTED_1, org.h2.api.ErrorCode.GENERAL_ERROR_1 -> Kind.DAMAGED;
            case org.h2.api.ErrorCode.FILE_VERSION_ERROR_1 -> Kind.NEWER;
            case org.h2.api.ErrorCode.DATABASE_NOT_FOUND_WITH_IF_EXISTS_1, org.h2.api.ErrorCode.DATABASE_NOT_FOUND_1 ->
                Kind.NOT_THERE;
            case org.h2.api.ErrorCode.DATABASE_IS_READ_ONLY, org.h2.api.ErrorCode.FILE_CREATION_FAILED_1 ->
                Kind.READ_ONLY;
            case org.h2.api.ErrorCode.DATABASE_IS_CLOSED, org.h2.api.ErrorCode.DATABASE_CALLED_AT_SHUTDOWN ->
                Kind.CLOSED;
            case org.h2.api.ErrorCode.IO_EXCEPTION_1, org.h2.api.ErrorCode.IO_EXCEPTION_2 ->
                isReadOnly(cause) ? Kind.READ_ONLY : Kind.DAMAGED;
            default -> Kind.UNEXPECTED;
        };
    }

    private static Kind ofServer(SQLException cause) {
        String state = cause.getSQLState() == null ? "" : cause.getSQLState();
        if (state.equals("53100")) {
            return Kind.DISK_FULL;
        }
        if (state.startsWith("28")) {
            return Kind.WRONG_PASSPHRASE;
        }
        if (state.equals("25006")) {
            return Kind.READ_ONLY;
        }
        if (state.startsWith("08") || state.startsWith("57P") || state.equals("3D000") || state.startsWith("53")) {
            return Kind.SERVER_AWAY;
        }
        return cause instanceof java.sql.SQLTransientConnectionException ? Kind.SERVER_AWAY : Kind.UNEXPECTED;
    }

    private static boolean isReadOnly(Throwable failure) {
        for (Throwable t = failure; t != null; t = t.getCause()) {
            if (t instanceof java.nio.file.AccessDeniedException
                    || t instanceof java.nio.file.ReadOnlyFileSystemException
                    || t instanceof FileSystemException f && says(f, "read-only")
                    || says(t, "read-only file system")
                    || says(t, "permission denied")) {
                return true;
            }
        }
        return false;
    }

    private static boolean saysDiskFull(Throwable t) {
        return says(t, "no space left")
                || says(t, "disk full")
                || says(t, "not enough space")
                || says(t, "quota exceeded")
                || says(t, "file too large");
    }

    private static boolean says(Throwable t, String words) {
        return t.getMessage() != null && t.getMessage().toLowerCase(Locale.ROOT).contains(words);
    }

    /** The engine's code only: its message may hold values. */
    private static String code(Throwable failure) {
        SQLException cause = sqlCause(failure);
        return cause == null
                ? failure.getClass().getSimpleName()
                : "code " + cause.getErrorCode() + ", state " + cause.getSQLState();
    }

    private static @Nullable SQLException sqlCause(Throwable failure) {
        SQLException found = null;
        for (Throwable t = failure; t != null; t = t.getCause()) {
            if (t instanceof SQLException sql) {
                found = found == null || sql.getErrorCode() != 0 ? sql : found;
            }
        }
        return found;
    }
}
