/** The rules, one class each. */
package slopewright.checks.internal;
