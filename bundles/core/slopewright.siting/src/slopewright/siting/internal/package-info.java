/** The families and what they share: reading of rule sets, level solutions, obstacle surfaces. */
package slopewright.siting.internal;
