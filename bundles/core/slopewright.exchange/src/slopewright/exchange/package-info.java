/** Readers and writers of other people's formats. */
package slopewright.exchange;
