/** Rules about light units and their equipment. */
package slopewright.checks.internal.unit;
