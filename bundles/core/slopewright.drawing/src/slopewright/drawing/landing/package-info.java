/** A chart of the landing directions round a helipad, with the slopes from which each is clear. */
package slopewright.drawing.landing;
