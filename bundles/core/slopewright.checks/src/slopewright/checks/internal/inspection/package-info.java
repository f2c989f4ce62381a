/** Rules about what an inspection in flight found. */
package slopewright.checks.internal.inspection;
