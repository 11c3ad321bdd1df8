package dev.calotte.stl.body;

/**
 * A plane over the bed: {@code z = byX x + byY y + at0}.
 *
 * @param byX how it rises along x
 * @param byY how it rises along y
 * @param at0 its height in millimetres over the origin
 */
record Plane(double byX, double byY, double at0) {

    /** The same height everywhere. */
    static Plane level(double heightMm) {
        return new Plane(0, 0, heightMm);
    }

    /** Higher by so much. */
    Plane raised(double mm) {
        return new Plane(byX, byY, at0 + mm);
    }

    double heightAt(double x, double y) {
        return byX * x + byY * y + at0;
    }
}
