/** The commands, one class each, and what they share. */
package slopewright.headless.internal;
