/** Rules about rows of units of sharp transition. */
package slopewright.checks.internal.row;
