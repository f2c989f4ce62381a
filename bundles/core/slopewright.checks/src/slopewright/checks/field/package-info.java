/** The obstacles and survey points around an aerodrome, brought into a frame once and kept from check to check. */
package slopewright.checks.field;
