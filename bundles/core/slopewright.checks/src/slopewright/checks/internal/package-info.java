/** What all rules share; the rules themselves, one class each, by subject in the packages below. */
package slopewright.checks.internal;
