/** Rules about setting an indicator up in the field, beside a pad and by hand. */
package slopewright.checks.internal.field;
