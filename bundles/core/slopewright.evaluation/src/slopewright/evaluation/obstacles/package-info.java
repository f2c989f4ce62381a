/** Obstacles and survey points around an aerodrome, brought into a frame once and compared with surfaces in one place. */
package slopewright.evaluation.obstacles;
