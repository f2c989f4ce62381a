/** Layouts held against the second implementation. */
package slopewright.siting.witness;
