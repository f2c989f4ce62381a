package slopewright.siting.site;

/**
 * A place in the coordinates in which distances are reckoned.
 *
 * @param x longitude in decimal degrees, or metres east on a plane
 * @param y latitude in decimal degrees, or metres north on a plane
 */
record GridPoint(double x, double y) {
}
