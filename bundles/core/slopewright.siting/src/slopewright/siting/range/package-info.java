/** From how far an indicator is seen, and from how far its units look apart. */
package slopewright.siting.range;
