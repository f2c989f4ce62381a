/** The frame of a runway end or helipad on the ground: from surveyed places to along, right and height, and back. */
package slopewright.siting.site;
