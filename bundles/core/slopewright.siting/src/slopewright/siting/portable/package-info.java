/** The set-up of a portable unit: slope from descent, azimuth by compass, sight line over obstacles, levelling and battery. */
package slopewright.siting.portable;
