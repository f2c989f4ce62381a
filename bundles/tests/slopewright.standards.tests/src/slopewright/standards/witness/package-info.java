/** Values held against the second transcription. */
package slopewright.standards.witness;
