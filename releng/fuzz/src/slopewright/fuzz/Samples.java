package slopewright.fuzz;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** Small sound files, of invented data, of the formats of which the tree holds none. */
final class Samples {

    /** Open runway data as a table. */
    static final String RUNWAYS = """
            id,airport_ref,airport_ident,length_ft,width_ft,surface,lighted,closed,le_ident,le_latitude_deg,le_longitude_deg,\
            le_elevation_ft,le_heading_degT,le_displaced_threshold_ft,he_ident,he_latitude_deg,he_longitude_deg,he_elevation_ft,\
            he_heading_degT,he_displaced_threshold_ft
            1,1,ZZAA,3652,100,ASP,1,0,09,0,10,100,90,300,27,0,10.01,200,270,
            2,1,ZZAA,3652,,GRS,1,1,09L,1,10,100,90,,27R,1,10.01,200,270,
            3,1,ZZAA,3652,100,"GRS, long",1,0,18,,,100,180,,36,,,200,0,
            4,2,ZZAC,3652,100,GRS,1,0,05,7,10,100,50,,23,,,,,
            """;

    /** A table of runway ends. */
    static final String ENDS = """
            id,aerodrome,latitudeDeg,longitudeDeg,trueBearingDeg,elevationM,verticalDatum
            e1,ZZAA,47.3,-11.9,92,86.4,MSL
            e2,ZZAA,47.29,-11.87,272,91.2,MSL
            "e 3","ZZ, AC",-47.3,11.9,0,-3,
            """;

    /** Points in a frame. */
    static final String POINTS = """
            id,alongM,rightM,heightM
            p1,-1200,12.5,40
            p2,-60,-100,3.25
            p3,0,0,0
            """;

    /** Points and a line in LandXML. */
    static final String LAND_XML = """
            <?xml version="1.0" encoding="UTF-8"?>
            <LandXML xmlns="http://www.landxml.org/schema/LandXML-1.2" version="1.2" date="2026-05-20" time="08:00:00">
              <Units><Imperial areaUnit="squareFoot" linearUnit="foot" volumeUnit="cubicFeet"/></Units>
              <CoordinateSystem epsgCode="32629"/>
              <CgPoints>
                <CgPoint name="T1" desc="Mast">17200787.4 915354.3 400</CgPoint>
                <CgPoint pntRef="T1"/>
              </CgPoints>
              <PlanFeatures><PlanFeature name="Wall"><CoordGeom><IrregularLine>
                <PntList3D>17200787.4 915354.3 330 17200820.2 915387.1 331</PntList3D>
              </IrregularLine></CoordGeom></PlanFeature></PlanFeatures>
              <Surfaces><Surface name="ground"/></Surfaces>
            </LandXML>
            """;

    /** An obstacle in AIXM. */
    static final String AIXM = """
            <?xml version="1.0"?>
            <message:AIXMBasicMessage xmlns:message="http://www.aixm.aero/schema/5.1/message"
                xmlns:aixm="http://www.aixm.aero/schema/5.1" xmlns:gml="http://www.opengis.net/gml/3.2">
            <message:hasMember><aixm:VerticalStructure><aixm:timeSlice><aixm:VerticalStructureTimeSlice>
              <aixm:interpretation>BASELINE</aixm:interpretation><aixm:name>Mast</aixm:name>
              <aixm:part><aixm:VerticalStructurePart>
            <aixm:horizontalProjection_location><aixm:ElevatedPoint srsName="urn:ogc:def:crs:EPSG::4326"><gml:pos>47.3 -11.9</gml:pos>
              <aixm:horizontalAccuracy uom="M">3</aixm:horizontalAccuracy><aixm:elevation uom="FT">350</aixm:elevation>
              <aixm:verticalAccuracy uom="M">1.5</aixm:verticalAccuracy></aixm:ElevatedPoint></aixm:horizontalProjection_location>
              </aixm:VerticalStructurePart></aixm:part>
            </aixm:VerticalStructureTimeSlice></aixm:timeSlice></aixm:VerticalStructure></message:hasMember>
            </message:AIXMBasicMessage>
            """;

    private static final int HEAD = 227;
    private static final int RECORD = 86;
    private static final int LENGTH = 28;
    private static final int COUNT = 40;
    private static final double STEP_M = 0.125;

    private Samples() {
    }

    /** A cloud of points: LAS 1.2, format 1, with a record that names the grid. */
    static byte[] cloud() {
        int begin = HEAD + RECORD;
        ByteBuffer out = ByteBuffer.allocate(begin + LENGTH * COUNT).order(ByteOrder.LITTLE_ENDIAN);
        out.put("LASF".getBytes(StandardCharsets.US_ASCII));
        out.put(24, (byte) 1).put(25, (byte) 2).putShort(94, (short) HEAD).putInt(96, begin).putInt(100, 1);
        out.put(104, (byte) 1).putShort(105, (short) LENGTH).putInt(107, COUNT);
        double[] offset = {279_000, 5_242_000, 0};
        double[] least = {279_000, 5_242_800, 100};
        for (int axis = 0; axis < 3; axis++) {
            out.putDouble(131 + 8 * axis, STEP_M).putDouble(155 + 8 * axis, offset[axis]);
            out.putDouble(179 + 16 * axis, least[axis] + COUNT - 1).putDouble(187 + 16 * axis, least[axis]);
        }
        out.put(HEAD + 2, "LASF_Projection".getBytes(StandardCharsets.US_ASCII)).putShort(HEAD + 18, (short) 34735)
                .putShort(HEAD + 20, (short) 32);
        int[] keys = {1, 1, 0, 3, 1024, 0, 1, 1, 3072, 0, 1, 32629, 3076, 0, 1, 9001};
        for (int i = 0; i < keys.length; i++) {
            out.putShort(HEAD + 54 + 2 * i, (short) keys[i]);
        }
        for (int i = 0; i < COUNT; i++) {
            int at = begin + LENGTH * i;
            for (int axis = 0; axis < 3; axis++) {
                out.putInt(at + 4 * axis, (int) Math.round((least[axis] + i - offset[axis]) / STEP_M));
            }
            out.put(at + 14, (byte) 9).put(at + 15, (byte) (i % 7));
        }
        return out.array();
    }
}
