/** Everything that is handed over of a project as a list to choose from: documents, drawings, schedules, maps, written into one folder. */
package slopewright.report.handover;
