package org.drillsheaf.figure.draw;

/** An upright rectangle on the page, millimetres, y down. */
public record Box(double left, double top, double right, double bottom) {
    /** Holds nothing; grows to whatever is added. */
    static final Box NOTHING = new Box(
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY);

    static Box around(double x, double y, double radius) {
        return new Box(x - radius, y - radius, x + radius, y + radius);
    }

    Box with(double x, double y) {
        return new Box(Math.min(left, x), Math.min(top, y), Math.max(right, x), Math.max(bottom, y));
    }

    Box with(Box other) {
        return new Box(
                Math.min(left, other.left),
                Math.min(top, other.top),
                Math.max(right, other.right),
                Math.max(bottom, other.bottom));
    }

    Box grown(double by) {
        return new Box(left - by, top - by, right + by, bottom + by);
    }

    Box moved(double dx, double dy) {
        return new Box(left + dx, top + dy, right + dx, bottom + dy);
    }

    boolean meets(Box other) {
        return left < other.right && right > other.left && top < other.bottom && bottom > other.top;
    }

    boolean isEmpty() {
        return !(right >= left && bottom >= top);
    }

    public double width() {
        return right - left;
    }

    public double height() {
        return bottom - top;
    }
}
