/** Strict readers of the tables and values that the rule sets are made of. */
package slopewright.standards.internal;
