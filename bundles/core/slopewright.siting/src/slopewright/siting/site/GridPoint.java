package slopewright.siting.site;

/**
 * A place in the coordinates in which distances are reckoned.
 *
 * @param x longitude in decimal degrees, or metres east on a plane
 * @param y latitude in decimal degrees, or metres north on a plane
 */
record GridPoint(double x, double y) {
    /** Spelled out: what a record has by itself is written anew at every start. */
    @Override
    public boolean equals(Object other) {
        return other instanceof GridPoint that && Double.compare(x, that.x) == 0 && Double.compare(y, that.y) == 0;
    }

    @Override
    public int hashCode() {
        int hash = Double.hashCode(x);
        return 31 * hash + Double.hashCode(y);
    }
}
