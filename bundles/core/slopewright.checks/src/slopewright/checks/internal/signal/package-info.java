/** Rules about what each unit shows: colours, rhythm, order and sharpness of its sectors. */
package slopewright.checks.internal.signal;
