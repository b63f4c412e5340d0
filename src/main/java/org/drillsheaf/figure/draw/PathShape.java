package org.drillsheaf.figure.draw;

import java.util.Arrays;

/**
 * An immutable path of lines and cubic curves. Coordinates are kept in whole hundredths of a millimetre, so that every
 * writer gives exactly the same figure.
 */
public final class PathShape {
    /** Receives the path in millimetres, x to the right and y down. */
    public interface Visitor {
        void moveTo(double x, double y);

        void lineTo(double x, double y);

        void curveTo(double x1, double y1, double x2, double y2, double x, double y);

        void close();
    }

    private static final byte MOVE = 'M';
    private static final byte LINE = 'L';
    private static final byte CURVE = 'C';
    private static final byte CLOSE = 'Z';

    private final byte[] commands;
    private final int[] hundredths;

    private PathShape(byte[] commands, int[] hundredths) {
        this.commands = commands;
        this.hundredths = hundredths;
    }

    public boolean isEmpty() {
        return commands.length == 0;
    }

    /** Number of moves, lines, curves and closings. */
    public int size() {
        return commands.length;
    }

    public void visit(Visitor visitor) {
        int at = 0;
        for (byte command : commands) {
            switch (command) {
                case MOVE -> visitor.moveTo(mm(at), mm(at + 1));
                case LINE -> visitor.lineTo(mm(at), mm(at + 1));
                case CURVE -> visitor.curveTo(mm(at), mm(at + 1), mm(at + 2), mm(at + 3), mm(at + 4), mm(at + 5));
                default -> visitor.close();
            }
            at += length(command);
        }
    }

    private double mm(int index) {
        return hundredths[index] / 100.0;
    }

    private static int length(byte command) {
        return command == CURVE ? 6 : command == CLOSE ? 0 : 2;
    }

    /** The same path moved by whole hundredths of a millimetre. */
    public PathShape moved(double rightMm, double downMm) {
        int dx = hundredth(rightMm);
        int dy = hundredth(downMm);
        int[] moved = hundredths.clone();
        for (int i = 0; i < moved.length; i += 2) {
            moved[i] += dx;
            moved[i + 1] += dy;
        }
        return new PathShape(commands, moved);
    }

    /** Box around all points and control points. */
    public Box box() {
        Box box = Box.NOTHING;
        for (int i = 0; i < hundredths.length; i += 2) {
            box = box.with(mm(i), mm(i + 1));
        }
        return box;
    }

    /**
     * SVG path data in hundredths of a millimetre with relative coordinates, which are the shortest, after the first. Every
     * number is a whole one.
     */
    String svgData() {
        StringBuilder data = new StringBuilder(hundredths.length * 4);
        int x = 0;
        int y = 0;
        int startX = 0;
        int startY = 0;
        int at = 0;
        byte before = 0;
        for (byte command : commands) {
            if (command == CLOSE) {
                data.append('z');
                x = startX;
                y = startY;
            } else {
                char letter = command == MOVE ? (at == 0 ? 'M' : 'm') : command == LINE ? 'l' : 'c';
                boolean same = command == before && command != MOVE;
                if (!same) {
                    data.append(letter);
                }
                for (int k = 0; k < length(command); k += 2) {
                    number(data, hundredths[at + k] - x);
                    number(data, hundredths[at + k + 1] - y);
                }
                at += length(command);
                x = hundredths[at - 2];
                y = hundredths[at - 1];
                if (command == MOVE) {
                    startX = x;
                    startY = y;
                }
            }
            before = command;
        }
        return data.toString();
    }

    private static void number(StringBuilder data, int value) {
        char last = data.charAt(data.length() - 1);
        if (value >= 0 && last >= '0' && last <= '9') {
            data.append(' ');
        }
        data.append(value);
    }

    private static int hundredth(double mm) {
        return (int) Math.rint(mm * 100);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof PathShape shape
                && Arrays.equals(commands, shape.commands)
                && Arrays.equals(hundredths, shape.hundredths);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(hundredths);
    }

    /** Collects a path; lines and curves shorter than a hundredth of a millimetre vanish. */
    static final class Builder {
        private byte[] commands = new byte[64];
        private int[] hundredths = new int[256];
        private int commandCount;
        private int numberCount;

        Builder moveTo(double x, double y) {
            return append(MOVE, x, y);
        }

        Builder lineTo(double x, double y) {
            return samePlace(x, y) ? this : append(LINE, x, y);
        }

        Builder curveTo(double x1, double y1, double x2, double y2, double x, double y) {
            return samePlace(x1, y1) && samePlace(x2, y2) && samePlace(x, y)
                    ? this
                    : append(CURVE, x1, y1, x2, y2, x, y);
        }

        Builder close() {
            return append(CLOSE);
        }

        private boolean samePlace(double x, double y) {
            return numberCount >= 2
                    && hundredth(x) == hundredths[numberCount - 2]
                    && hundredth(y) == hundredths[numberCount - 1];
        }

        private Builder append(byte command, double... numbers) {
            if (commandCount == commands.length) {
                commands = Arrays.copyOf(commands, 2 * commandCount);
            }
            if (numberCount + 6 > hundredths.length) {
                hundredths = Arrays.copyOf(hundredths, 2 * hundredths.length);
            }
            commands[commandCount++] = command;
            for (double number : numbers) {
                hundredths[numberCount++] = hundredth(number);
            }
            return this;
        }

        PathShape build() {
            return new PathShape(Arrays.copyOf(commands, commandCount), Arrays.copyOf(hundredths, numberCount));
        }
    }
}
