/** Rules about bars one behind the other. */
package slopewright.checks.internal.bar;
