/** What a pilot sees from a place, and an approach flown in time. */
package slopewright.drawing.pilot;
