/**
 * A second implementation of siting, signals, surfaces, margins and wheel clearances, written from the rule texts alone by somebody
 * who did not read the first; it searches and samples where the first solves, and tests hold the two against each other.
 *
 * <p>Where the texts leave something open it has chosen. Each entry names the clause, or the section of the extract of the
 * rule texts (the "pack"), what is open, what was chosen, and another reading where one is near.
 *
 * <p><b>Settings</b>
 * <ol start="1">
 * <li>Pack {@code icao.md} 3.2 / {@code ca-2020-02}. The table says "2° to 4°" and "over 4°", the Canadian alert "begin at 4°".
 * Chosen: <b>steep above 4°, exactly 4° is still standard</b>; exactly 7° is still the 30' set.
 * <li>Steep row of four: equal steps (over 4°: −45/−15/+15/+45'; over 7°: −90/−30/+30/+90'); row of two ±22.5' and ±30'.
 * Doubtful,
 * from memory; Canada fits A at −40'. Steep row of four beside a glide path: "not settled", so {@code Settings.row} throws.
 * <li>Row of two beside a glide path: nothing printed, ±15' kept. Under {@code easa}, {@code casa} the ICAO settings are inherited.
 * {@code faa}: no steep set is printed (table to 4°), offsets kept at every slope.
 * <li>Row at a heliport, 45': B, C ±22.5', A, D 20' further out (decision of the project); two units ±22.5'. The HELIPORT set is
 * used at every
 * slope, no steep differences on top. Both choices apply to {@code faa} too (2.10).
 * <li>Heliport sector unit: the text does not say the 45' lie evenly about the slope. Chosen: centred (edges θ−37.5', θ−22.5',
 * θ+22.5').
 * <li>Heliport pair: edges generalised from the 6° example, green 2°, on-path θ±15'.
 * <li>Two bars: near θ−0.25°, far θ+0.25°; LOW_CUSTOM θ−0.5°, θ. Three bars: θ−0.25°, θ, θ+0.25°,
 * with θ the <i>lower</i>
 * path.
 * <li>Tri-colour and pulsating: no printed sector edges; they are always an input. The dark amber at the green-red edge is not
 * modelled.
 * </ol>
 *
 * <p><b>Places</b>
 * <ol start="9">
 * <li>Fig 5-19 f (code 1 or 2, four units 10/6 m): read as a choice; {@code Lateral.usual} names it for codes 1 and 2. {@code
 * Plan.of} takes STANDARD; the caller says REDUCED.
 * <li>Edge distance is to the unit's reference point (gap 12).
 * <li>US rows of two: 50 ft and 30 ft as rows of four. US single units: no lateral place printed, 50 ft as the bars. Bars: 50 ft and
 * 16 ft (memory). Heliport pair: on the approach line, ±10 ft, the low-set unit on the left (order not printed). Heliport sector
 * unit: on the approach line, right 0.
 * <li>Sides both: units named left-/right-; where the two rows disagree, the <b>lower</b> meaning is told.
 * </ol>
 *
 * <p><b>Distance</b>
 * <ol start="13">
 * <li>{@code icao:5th} (also {@code easa}, {@code casa} by inheritance): F5's 0.3 m. Chosen literally: D for a lens level with the
 * threshold; where the lens at that place is within 0.3 m (inclusive) of the threshold, D stays; else exact. The exact distance is
 * given beside it ({@code exactDistanceM}). Also applied beside a glide path. Not applied to T forms (rule d there has no limit) and
 * helipads. {@code icao:9th} and {@code faa} always correct.
 * <li>2' allowance: rows under ICAO, EASA, CASA. None for {@code faa} (WE-1: 47.22 ft at 2°50'), bars, T forms, sector units, pairs.
 * <li>Glide path, ICAO: the angle that levels the lens is the slope θ (the eye line), not M. Origin by height: where the path meets
 * the <b>runway</b> profile; by distance: at that profile's elevation. The visual slope is used for the eye line (the path's own
 * angle only for the origin by height). If the minimum clearance fails, D grows until it is just met. Deviating: "lens against
 * threshold" read without the origin's elevation would give D = O + EAH cot θ − lens·cot θ; the
 * two differ by z(O)·cot θ, only where
 * the origin is given by a distance on a sloping runway.
 * <li>Glide path, {@code faa}: D = origin (group 4 + 300 ft), no level correction, no clearance check. Settings GLIDE_PATH only
 * where the caller says so (printed for group 4 beside an ILS).
 * <li>{@code faa} without a glide path: lowest on-course signal equals the crossing height with the lens on the ground line.
 * <li>"Shortest distance": first distance outward where the least on-slope eye height reaches the required one; walked in steps of 5
 * m, then halved, so that a dip shorter than the step can be missed. Slope lines: from station to station, between which the ground is
 * straight and a line meets it once.
 * <li>T forms: distance from the nominal height at θ; legs at the printed offsets from the <i>level</i> place of the bar (H cot θ),
 * each moved until its own cut-off crosses the threshold as high as on level ground. Glide path demand for T forms: the eye line as
 * in 15. 280 m is the drawn figure, 286.22 m the exact one.
 * <li>Bars: near bar by the lowest on-path signal of the lower path; the other bars one spacing (700 ft) further each, not moved for
 * levels (no rule). The lens of each stands on its ground.
 * <li>Helipads: every family by the eye path, D tan θ + lens = hover + eye above skids; MEHT is the least on-slope height over the
 * hover point.
 * <li>Tri-colour, pulsating, sector unit on a runway: the asked eye height is the <b>least</b> on-slope height (lower edge of the
 * on-path sector); the nominal one is told beside it.
 * <li>Alignment panels: the slope line runs through the top edge of the middle (rear) panel, which is the place named by the
 * distance. On slope within 1' (a choice; the split itself is given).
 * <li>Axis turned: distance and elevation are along the turned axis (plane angle); positive turn sends the beam to the right as the
 * landing pilot sees it. Over the threshold the eye is on the runway centre line, so lateral offset × sin(turn) enters.
 * <li>Table 5-2, desired: 6, 9, 9, 9 under both editions; the machine-read 6, 6, 6, 9 is kept as {@code desired-machine-read-m}.
 * Group edges compared exactly, without the stored resolution of 1 mm.
 * </ol>
 *
 * <p><b>Surface</b>
 * <ol start="26">
 * <li>{@code icao:5th}: fixed 30/60 m before the threshold, height 0 there. {@code icao:9th}, {@code easa}: start = place − (D1 +
 * 30/60); height 0 (threshold level) also after the surface has moved.
 * <li>Row of four, non-instrument code 1: no slope under both ICAO editions (slope NaN, {@code evaluable()} false). {@code easa}:
 * pack 6.2 gives A − 0.57° in that column too (from memory), so it has one. Row of two at codes 3, 4 and T form at code 1: none.
 * <li>A is the least setting of the units as they stand (so A − 0.57° also for steep, wide and heliport settings).
 * <li>{@code faa} rows: from 300 ft before the row, zero width there, ±10° from there, 1° below B (four) or A (two), 4 statute
 * miles; datum the elevation of the runway reference point = where the slope line through the reference unit meets the runway
 * profile. The start lies behind the threshold when D &gt; 300 ft.
 * <li>{@code faa} bars, tri-colour, pulsating: foremost light, ±10°, <b>path − 1°</b> ("path at least 1.0° above obstacles"); bars
 * to 4 NM from the threshold, single units 4 statute miles from the unit. Other reading: lowest on-path signal − 1° (two bars 0.25°
 * lower). The line that finds the reference point of bars runs through the near bar.
 * <li>Heliports: ICAO as Vol II Table 5-1; start measured from the FATO end given by the caller, height 0 at the TLOF, A of the
 * sector unit = θ−37.5'. {@code faa}: lowest on-slope signal − 1°, ±10°, from the unit and its lens height, no printed length
 * (infinite).
 * <li>{@code casa}: 1.9°, ±7.5°, from the threshold, zero width, 5 NM (instrument 7 NM), for rows and T forms; the 11 m and the
 * older 150 m / 9 km are transcribed, not used.
 * <li>Axis turned: the surface turns about the indicator's place on the centre line (no text).
 * <li>Accuracy: horizontal is a disc (not a box), vertical is taken off the margin. The limit is the least surface height over the
 * part of the disc in plan of the surface. Edges belong to the surface.
 * <li>Lines interpolate height between corners. A polygon's top is level at its highest corner.
 * </ol>
 *
 * <p><b>Signals</b>
 * <ol start="36">
 * <li>Exactly at a setting: red (white only above). Fly-up units are dark at their own cut-off, fly-down units at theirs too. A fly-
 * up unit's cut-off edge is taken one rounding step below θ.
 * <li>Row of two: WW well-above, RW on-slope, RR well-below (pack 3.3). Orders a healthy row cannot show, or bars white over red
 * reversed: OUTSIDE. Beam azimuth: limited only where the layout gives a half width.
 * <li>T form: fly-down 1 to 3 is ABOVE (no "well above" in the text); red bars are WELL_BELOW whatever the legs show; no bars seen
 * (above 6°, below 0°): OUTSIDE.
 * <li>Sector unit: slightly below is BELOW, below is WELL_BELOW. Pulsating: steady red BELOW, pulsating red WELL_BELOW. Pair: any
 * white with any red is OUTSIDE.
 * <li>Photometry: US contours taken with half-round ends as the ICAO figure (shape not printed).
 * </ol>
 *
 * <p><b>Printed figures that do not come out</b>
 * <ul>
 * <li>Fly-up 3, Australia "7 ft": geometry 9.9 ft; the pack says it does not fit (red limit gives 6.7 ft).
 * <li>"22 m" and "28 m" of the T form bands: geometry 22.94 and 28.88 m, checked within 1 m (the pack prints both).
 * <li>Australian band edges are checked within 1 ft.
 * <li>US chart table: sine form within ±4 ft/min, row 12.0 is 21 × speed, as the pack finds. Pack 10.4: last column left out as
 * told; feet a mile within 1, 120 kt row within 3.
 * <li>Height group band edges: group 1 least 381.6 and others within 0.051 ft (rounding).
 * </ul>
 * <p>Everything else agrees within the tolerance printed by {@code SelfCheck}.
 *
 * <p><b>Not done</b>
 * <p>Easa heliports, three-bar and two-bar outside {@code faa}, glide path demand for bars, intensity of T forms as a function
 * (transcribed only), range by illuminance beyond {@code Light.rangeM}, national variants (France, Russia, Spain, Canada, Korea,
 * Japan), curvature (a decision of the project: none for surfaces).
 */
package slopewright.witness;
