/** Corrupts projects one number at a time and looks whether the check notices. */
package slopewright.blindness;
