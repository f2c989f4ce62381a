/**
 */
package slopewright.model.impl;

import java.util.Collection;

import org.eclipse.emf.common.notify.Notification;
import org.eclipse.emf.common.notify.NotificationChain;

import org.eclipse.emf.common.util.EList;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.InternalEObject;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import org.eclipse.emf.ecore.util.EObjectContainmentEList;
import org.eclipse.emf.ecore.util.InternalEList;

import slopewright.model.Aerodrome;
import slopewright.model.AeroplaneGroup;
import slopewright.model.BackgroundImage;
import slopewright.model.Circuit;
import slopewright.model.EquipmentType;
import slopewright.model.GroundLevel;
import slopewright.model.Helipad;
import slopewright.model.MagneticVariation;
import slopewright.model.Obstacle;
import slopewright.model.ObstacleSurvey;
import slopewright.model.Runway;
import slopewright.model.SlopewrightPackage;
import slopewright.model.TaxiwayEdge;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Aerodrome</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.AerodromeImpl#getIdentifier <em>Identifier</em>}</li>
 *   <li>{@link slopewright.model.impl.AerodromeImpl#getLatitudeDeg <em>Latitude Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.AerodromeImpl#getLongitudeDeg <em>Longitude Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.AerodromeImpl#getElevationM <em>Elevation M</em>}</li>
 *   <li>{@link slopewright.model.impl.AerodromeImpl#getVerticalDatum <em>Vertical Datum</em>}</li>
 *   <li>{@link slopewright.model.impl.AerodromeImpl#getGeoidOffsetM <em>Geoid Offset M</em>}</li>
 *   <li>{@link slopewright.model.impl.AerodromeImpl#getCoordinateReference <em>Coordinate Reference</em>}</li>
 *   <li>{@link slopewright.model.impl.AerodromeImpl#getCoordinateEpoch <em>Coordinate Epoch</em>}</li>
 *   <li>{@link slopewright.model.impl.AerodromeImpl#getCoordinateAccuracyM <em>Coordinate Accuracy M</em>}</li>
 *   <li>{@link slopewright.model.impl.AerodromeImpl#getGridRotationDeg <em>Grid Rotation Deg</em>}</li>
 *   <li>{@link slopewright.model.impl.AerodromeImpl#getMagneticVariation <em>Magnetic Variation</em>}</li>
 *   <li>{@link slopewright.model.impl.AerodromeImpl#getRunways <em>Runways</em>}</li>
 *   <li>{@link slopewright.model.impl.AerodromeImpl#getHelipads <em>Helipads</em>}</li>
 *   <li>{@link slopewright.model.impl.AerodromeImpl#getAeroplaneGroups <em>Aeroplane Groups</em>}</li>
 *   <li>{@link slopewright.model.impl.AerodromeImpl#getObstacles <em>Obstacles</em>}</li>
 *   <li>{@link slopewright.model.impl.AerodromeImpl#getGroundLevels <em>Ground Levels</em>}</li>
 *   <li>{@link slopewright.model.impl.AerodromeImpl#getTaxiwayEdges <em>Taxiway Edges</em>}</li>
 *   <li>{@link slopewright.model.impl.AerodromeImpl#getCircuits <em>Circuits</em>}</li>
 *   <li>{@link slopewright.model.impl.AerodromeImpl#getEquipmentTypes <em>Equipment Types</em>}</li>
 *   <li>{@link slopewright.model.impl.AerodromeImpl#getBackgroundImages <em>Background Images</em>}</li>
 *   <li>{@link slopewright.model.impl.AerodromeImpl#getObstacleSurveys <em>Obstacle Surveys</em>}</li>
 * </ul>
 *
 * @generated
 */
public class AerodromeImpl extends NamedImpl implements Aerodrome {
	/**
	 * The default value of the '{@link #getIdentifier() <em>Identifier</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIdentifier()
	 * @generated
	 * @ordered
	 */
	protected static final String IDENTIFIER_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getIdentifier() <em>Identifier</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getIdentifier()
	 * @generated
	 * @ordered
	 */
	protected String identifier = IDENTIFIER_EDEFAULT;

	/**
	 * The default value of the '{@link #getLatitudeDeg() <em>Latitude Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLatitudeDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double LATITUDE_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLatitudeDeg() <em>Latitude Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLatitudeDeg()
	 * @generated
	 * @ordered
	 */
	protected Double latitudeDeg = LATITUDE_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getLongitudeDeg() <em>Longitude Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLongitudeDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double LONGITUDE_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getLongitudeDeg() <em>Longitude Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getLongitudeDeg()
	 * @generated
	 * @ordered
	 */
	protected Double longitudeDeg = LONGITUDE_DEG_EDEFAULT;

	/**
	 * The default value of the '{@link #getElevationM() <em>Elevation M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElevationM()
	 * @generated
	 * @ordered
	 */
	protected static final Double ELEVATION_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getElevationM() <em>Elevation M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getElevationM()
	 * @generated
	 * @ordered
	 */
	protected Double elevationM = ELEVATION_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getVerticalDatum() <em>Vertical Datum</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVerticalDatum()
	 * @generated
	 * @ordered
	 */
	protected static final String VERTICAL_DATUM_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getVerticalDatum() <em>Vertical Datum</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVerticalDatum()
	 * @generated
	 * @ordered
	 */
	protected String verticalDatum = VERTICAL_DATUM_EDEFAULT;

	/**
	 * The default value of the '{@link #getGeoidOffsetM() <em>Geoid Offset M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGeoidOffsetM()
	 * @generated
	 * @ordered
	 */
	protected static final Double GEOID_OFFSET_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGeoidOffsetM() <em>Geoid Offset M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGeoidOffsetM()
	 * @generated
	 * @ordered
	 */
	protected Double geoidOffsetM = GEOID_OFFSET_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getCoordinateReference() <em>Coordinate Reference</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoordinateReference()
	 * @generated
	 * @ordered
	 */
	protected static final String COORDINATE_REFERENCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCoordinateReference() <em>Coordinate Reference</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoordinateReference()
	 * @generated
	 * @ordered
	 */
	protected String coordinateReference = COORDINATE_REFERENCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getCoordinateEpoch() <em>Coordinate Epoch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoordinateEpoch()
	 * @generated
	 * @ordered
	 */
	protected static final Double COORDINATE_EPOCH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCoordinateEpoch() <em>Coordinate Epoch</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoordinateEpoch()
	 * @generated
	 * @ordered
	 */
	protected Double coordinateEpoch = COORDINATE_EPOCH_EDEFAULT;

	/**
	 * The default value of the '{@link #getCoordinateAccuracyM() <em>Coordinate Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoordinateAccuracyM()
	 * @generated
	 * @ordered
	 */
	protected static final Double COORDINATE_ACCURACY_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getCoordinateAccuracyM() <em>Coordinate Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCoordinateAccuracyM()
	 * @generated
	 * @ordered
	 */
	protected Double coordinateAccuracyM = COORDINATE_ACCURACY_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getGridRotationDeg() <em>Grid Rotation Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGridRotationDeg()
	 * @generated
	 * @ordered
	 */
	protected static final Double GRID_ROTATION_DEG_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getGridRotationDeg() <em>Grid Rotation Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGridRotationDeg()
	 * @generated
	 * @ordered
	 */
	protected Double gridRotationDeg = GRID_ROTATION_DEG_EDEFAULT;

	/**
	 * The cached value of the '{@link #getMagneticVariation() <em>Magnetic Variation</em>}' containment reference.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getMagneticVariation()
	 * @generated
	 * @ordered
	 */
	protected MagneticVariation magneticVariation;

	/**
	 * The cached value of the '{@link #getRunways() <em>Runways</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getRunways()
	 * @generated
	 * @ordered
	 */
	protected EList<Runway> runways;

	/**
	 * The cached value of the '{@link #getHelipads() <em>Helipads</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHelipads()
	 * @generated
	 * @ordered
	 */
	protected EList<Helipad> helipads;

	/**
	 * The cached value of the '{@link #getAeroplaneGroups() <em>Aeroplane Groups</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getAeroplaneGroups()
	 * @generated
	 * @ordered
	 */
	protected EList<AeroplaneGroup> aeroplaneGroups;

	/**
	 * The cached value of the '{@link #getObstacles() <em>Obstacles</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getObstacles()
	 * @generated
	 * @ordered
	 */
	protected EList<Obstacle> obstacles;

	/**
	 * The cached value of the '{@link #getGroundLevels() <em>Ground Levels</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getGroundLevels()
	 * @generated
	 * @ordered
	 */
	protected EList<GroundLevel> groundLevels;

	/**
	 * The cached value of the '{@link #getTaxiwayEdges() <em>Taxiway Edges</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getTaxiwayEdges()
	 * @generated
	 * @ordered
	 */
	protected EList<TaxiwayEdge> taxiwayEdges;

	/**
	 * The cached value of the '{@link #getCircuits() <em>Circuits</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getCircuits()
	 * @generated
	 * @ordered
	 */
	protected EList<Circuit> circuits;

	/**
	 * The cached value of the '{@link #getEquipmentTypes() <em>Equipment Types</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getEquipmentTypes()
	 * @generated
	 * @ordered
	 */
	protected EList<EquipmentType> equipmentTypes;

	/**
	 * The cached value of the '{@link #getBackgroundImages() <em>Background Images</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getBackgroundImages()
	 * @generated
	 * @ordered
	 */
	protected EList<BackgroundImage> backgroundImages;

	/**
	 * The cached value of the '{@link #getObstacleSurveys() <em>Obstacle Surveys</em>}' containment reference list.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getObstacleSurveys()
	 * @generated
	 * @ordered
	 */
	protected EList<ObstacleSurvey> obstacleSurveys;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected AerodromeImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.AERODROME;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getIdentifier() {
		return identifier;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setIdentifier(String newIdentifier) {
		String oldIdentifier = identifier;
		identifier = newIdentifier;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.AERODROME__IDENTIFIER, oldIdentifier, identifier));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getLatitudeDeg() {
		return latitudeDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLatitudeDeg(Double newLatitudeDeg) {
		Double oldLatitudeDeg = latitudeDeg;
		latitudeDeg = newLatitudeDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.AERODROME__LATITUDE_DEG, oldLatitudeDeg, latitudeDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getLongitudeDeg() {
		return longitudeDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setLongitudeDeg(Double newLongitudeDeg) {
		Double oldLongitudeDeg = longitudeDeg;
		longitudeDeg = newLongitudeDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.AERODROME__LONGITUDE_DEG, oldLongitudeDeg, longitudeDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getElevationM() {
		return elevationM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setElevationM(Double newElevationM) {
		Double oldElevationM = elevationM;
		elevationM = newElevationM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.AERODROME__ELEVATION_M, oldElevationM, elevationM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getVerticalDatum() {
		return verticalDatum;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVerticalDatum(String newVerticalDatum) {
		String oldVerticalDatum = verticalDatum;
		verticalDatum = newVerticalDatum;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.AERODROME__VERTICAL_DATUM, oldVerticalDatum, verticalDatum));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getGeoidOffsetM() {
		return geoidOffsetM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGeoidOffsetM(Double newGeoidOffsetM) {
		Double oldGeoidOffsetM = geoidOffsetM;
		geoidOffsetM = newGeoidOffsetM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.AERODROME__GEOID_OFFSET_M, oldGeoidOffsetM, geoidOffsetM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getCoordinateReference() {
		return coordinateReference;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCoordinateReference(String newCoordinateReference) {
		String oldCoordinateReference = coordinateReference;
		coordinateReference = newCoordinateReference;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.AERODROME__COORDINATE_REFERENCE, oldCoordinateReference, coordinateReference));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getCoordinateEpoch() {
		return coordinateEpoch;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCoordinateEpoch(Double newCoordinateEpoch) {
		Double oldCoordinateEpoch = coordinateEpoch;
		coordinateEpoch = newCoordinateEpoch;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.AERODROME__COORDINATE_EPOCH, oldCoordinateEpoch, coordinateEpoch));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getCoordinateAccuracyM() {
		return coordinateAccuracyM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setCoordinateAccuracyM(Double newCoordinateAccuracyM) {
		Double oldCoordinateAccuracyM = coordinateAccuracyM;
		coordinateAccuracyM = newCoordinateAccuracyM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.AERODROME__COORDINATE_ACCURACY_M, oldCoordinateAccuracyM, coordinateAccuracyM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getGridRotationDeg() {
		return gridRotationDeg;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setGridRotationDeg(Double newGridRotationDeg) {
		Double oldGridRotationDeg = gridRotationDeg;
		gridRotationDeg = newGridRotationDeg;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.AERODROME__GRID_ROTATION_DEG, oldGridRotationDeg, gridRotationDeg));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public MagneticVariation getMagneticVariation() {
		return magneticVariation;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	public NotificationChain basicSetMagneticVariation(MagneticVariation newMagneticVariation, NotificationChain msgs) {
		MagneticVariation oldMagneticVariation = magneticVariation;
		magneticVariation = newMagneticVariation;
		if (eNotificationRequired()) {
			ENotificationImpl notification = new ENotificationImpl(this, Notification.SET, SlopewrightPackage.AERODROME__MAGNETIC_VARIATION, oldMagneticVariation, newMagneticVariation);
			if (msgs == null) msgs = notification; else msgs.add(notification);
		}
		return msgs;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setMagneticVariation(MagneticVariation newMagneticVariation) {
		if (newMagneticVariation != magneticVariation) {
			NotificationChain msgs = null;
			if (magneticVariation != null)
				msgs = ((InternalEObject)magneticVariation).eInverseRemove(this, EOPPOSITE_FEATURE_BASE - SlopewrightPackage.AERODROME__MAGNETIC_VARIATION, null, msgs);
			if (newMagneticVariation != null)
				msgs = ((InternalEObject)newMagneticVariation).eInverseAdd(this, EOPPOSITE_FEATURE_BASE - SlopewrightPackage.AERODROME__MAGNETIC_VARIATION, null, msgs);
			msgs = basicSetMagneticVariation(newMagneticVariation, msgs);
			if (msgs != null) msgs.dispatch();
		}
		else if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.AERODROME__MAGNETIC_VARIATION, newMagneticVariation, newMagneticVariation));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Runway> getRunways() {
		if (runways == null) {
			runways = new EObjectContainmentEList<Runway>(Runway.class, this, SlopewrightPackage.AERODROME__RUNWAYS);
		}
		return runways;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Helipad> getHelipads() {
		if (helipads == null) {
			helipads = new EObjectContainmentEList<Helipad>(Helipad.class, this, SlopewrightPackage.AERODROME__HELIPADS);
		}
		return helipads;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<AeroplaneGroup> getAeroplaneGroups() {
		if (aeroplaneGroups == null) {
			aeroplaneGroups = new EObjectContainmentEList<AeroplaneGroup>(AeroplaneGroup.class, this, SlopewrightPackage.AERODROME__AEROPLANE_GROUPS);
		}
		return aeroplaneGroups;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Obstacle> getObstacles() {
		if (obstacles == null) {
			obstacles = new EObjectContainmentEList<Obstacle>(Obstacle.class, this, SlopewrightPackage.AERODROME__OBSTACLES);
		}
		return obstacles;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<GroundLevel> getGroundLevels() {
		if (groundLevels == null) {
			groundLevels = new EObjectContainmentEList<GroundLevel>(GroundLevel.class, this, SlopewrightPackage.AERODROME__GROUND_LEVELS);
		}
		return groundLevels;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<TaxiwayEdge> getTaxiwayEdges() {
		if (taxiwayEdges == null) {
			taxiwayEdges = new EObjectContainmentEList<TaxiwayEdge>(TaxiwayEdge.class, this, SlopewrightPackage.AERODROME__TAXIWAY_EDGES);
		}
		return taxiwayEdges;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<Circuit> getCircuits() {
		if (circuits == null) {
			circuits = new EObjectContainmentEList<Circuit>(Circuit.class, this, SlopewrightPackage.AERODROME__CIRCUITS);
		}
		return circuits;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<EquipmentType> getEquipmentTypes() {
		if (equipmentTypes == null) {
			equipmentTypes = new EObjectContainmentEList<EquipmentType>(EquipmentType.class, this, SlopewrightPackage.AERODROME__EQUIPMENT_TYPES);
		}
		return equipmentTypes;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<BackgroundImage> getBackgroundImages() {
		if (backgroundImages == null) {
			backgroundImages = new EObjectContainmentEList<BackgroundImage>(BackgroundImage.class, this, SlopewrightPackage.AERODROME__BACKGROUND_IMAGES);
		}
		return backgroundImages;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public EList<ObstacleSurvey> getObstacleSurveys() {
		if (obstacleSurveys == null) {
			obstacleSurveys = new EObjectContainmentEList<ObstacleSurvey>(ObstacleSurvey.class, this, SlopewrightPackage.AERODROME__OBSTACLE_SURVEYS);
		}
		return obstacleSurveys;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public NotificationChain eInverseRemove(InternalEObject otherEnd, int featureID, NotificationChain msgs) {
		switch (featureID) {
			case SlopewrightPackage.AERODROME__MAGNETIC_VARIATION:
				return basicSetMagneticVariation(null, msgs);
			case SlopewrightPackage.AERODROME__RUNWAYS:
				return ((InternalEList<?>)getRunways()).basicRemove(otherEnd, msgs);
			case SlopewrightPackage.AERODROME__HELIPADS:
				return ((InternalEList<?>)getHelipads()).basicRemove(otherEnd, msgs);
			case SlopewrightPackage.AERODROME__AEROPLANE_GROUPS:
				return ((InternalEList<?>)getAeroplaneGroups()).basicRemove(otherEnd, msgs);
			case SlopewrightPackage.AERODROME__OBSTACLES:
				return ((InternalEList<?>)getObstacles()).basicRemove(otherEnd, msgs);
			case SlopewrightPackage.AERODROME__GROUND_LEVELS:
				return ((InternalEList<?>)getGroundLevels()).basicRemove(otherEnd, msgs);
			case SlopewrightPackage.AERODROME__TAXIWAY_EDGES:
				return ((InternalEList<?>)getTaxiwayEdges()).basicRemove(otherEnd, msgs);
			case SlopewrightPackage.AERODROME__CIRCUITS:
				return ((InternalEList<?>)getCircuits()).basicRemove(otherEnd, msgs);
			case SlopewrightPackage.AERODROME__EQUIPMENT_TYPES:
				return ((InternalEList<?>)getEquipmentTypes()).basicRemove(otherEnd, msgs);
			case SlopewrightPackage.AERODROME__BACKGROUND_IMAGES:
				return ((InternalEList<?>)getBackgroundImages()).basicRemove(otherEnd, msgs);
			case SlopewrightPackage.AERODROME__OBSTACLE_SURVEYS:
				return ((InternalEList<?>)getObstacleSurveys()).basicRemove(otherEnd, msgs);
		}
		return super.eInverseRemove(otherEnd, featureID, msgs);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SlopewrightPackage.AERODROME__IDENTIFIER:
				return getIdentifier();
			case SlopewrightPackage.AERODROME__LATITUDE_DEG:
				return getLatitudeDeg();
			case SlopewrightPackage.AERODROME__LONGITUDE_DEG:
				return getLongitudeDeg();
			case SlopewrightPackage.AERODROME__ELEVATION_M:
				return getElevationM();
			case SlopewrightPackage.AERODROME__VERTICAL_DATUM:
				return getVerticalDatum();
			case SlopewrightPackage.AERODROME__GEOID_OFFSET_M:
				return getGeoidOffsetM();
			case SlopewrightPackage.AERODROME__COORDINATE_REFERENCE:
				return getCoordinateReference();
			case SlopewrightPackage.AERODROME__COORDINATE_EPOCH:
				return getCoordinateEpoch();
			case SlopewrightPackage.AERODROME__COORDINATE_ACCURACY_M:
				return getCoordinateAccuracyM();
			case SlopewrightPackage.AERODROME__GRID_ROTATION_DEG:
				return getGridRotationDeg();
			case SlopewrightPackage.AERODROME__MAGNETIC_VARIATION:
				return getMagneticVariation();
			case SlopewrightPackage.AERODROME__RUNWAYS:
				return getRunways();
			case SlopewrightPackage.AERODROME__HELIPADS:
				return getHelipads();
			case SlopewrightPackage.AERODROME__AEROPLANE_GROUPS:
				return getAeroplaneGroups();
			case SlopewrightPackage.AERODROME__OBSTACLES:
				return getObstacles();
			case SlopewrightPackage.AERODROME__GROUND_LEVELS:
				return getGroundLevels();
			case SlopewrightPackage.AERODROME__TAXIWAY_EDGES:
				return getTaxiwayEdges();
			case SlopewrightPackage.AERODROME__CIRCUITS:
				return getCircuits();
			case SlopewrightPackage.AERODROME__EQUIPMENT_TYPES:
				return getEquipmentTypes();
			case SlopewrightPackage.AERODROME__BACKGROUND_IMAGES:
				return getBackgroundImages();
			case SlopewrightPackage.AERODROME__OBSTACLE_SURVEYS:
				return getObstacleSurveys();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@SuppressWarnings("unchecked")
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case SlopewrightPackage.AERODROME__IDENTIFIER:
				setIdentifier((String)newValue);
				return;
			case SlopewrightPackage.AERODROME__LATITUDE_DEG:
				setLatitudeDeg((Double)newValue);
				return;
			case SlopewrightPackage.AERODROME__LONGITUDE_DEG:
				setLongitudeDeg((Double)newValue);
				return;
			case SlopewrightPackage.AERODROME__ELEVATION_M:
				setElevationM((Double)newValue);
				return;
			case SlopewrightPackage.AERODROME__VERTICAL_DATUM:
				setVerticalDatum((String)newValue);
				return;
			case SlopewrightPackage.AERODROME__GEOID_OFFSET_M:
				setGeoidOffsetM((Double)newValue);
				return;
			case SlopewrightPackage.AERODROME__COORDINATE_REFERENCE:
				setCoordinateReference((String)newValue);
				return;
			case SlopewrightPackage.AERODROME__COORDINATE_EPOCH:
				setCoordinateEpoch((Double)newValue);
				return;
			case SlopewrightPackage.AERODROME__COORDINATE_ACCURACY_M:
				setCoordinateAccuracyM((Double)newValue);
				return;
			case SlopewrightPackage.AERODROME__GRID_ROTATION_DEG:
				setGridRotationDeg((Double)newValue);
				return;
			case SlopewrightPackage.AERODROME__MAGNETIC_VARIATION:
				setMagneticVariation((MagneticVariation)newValue);
				return;
			case SlopewrightPackage.AERODROME__RUNWAYS:
				getRunways().clear();
				getRunways().addAll((Collection<? extends Runway>)newValue);
				return;
			case SlopewrightPackage.AERODROME__HELIPADS:
				getHelipads().clear();
				getHelipads().addAll((Collection<? extends Helipad>)newValue);
				return;
			case SlopewrightPackage.AERODROME__AEROPLANE_GROUPS:
				getAeroplaneGroups().clear();
				getAeroplaneGroups().addAll((Collection<? extends AeroplaneGroup>)newValue);
				return;
			case SlopewrightPackage.AERODROME__OBSTACLES:
				getObstacles().clear();
				getObstacles().addAll((Collection<? extends Obstacle>)newValue);
				return;
			case SlopewrightPackage.AERODROME__GROUND_LEVELS:
				getGroundLevels().clear();
				getGroundLevels().addAll((Collection<? extends GroundLevel>)newValue);
				return;
			case SlopewrightPackage.AERODROME__TAXIWAY_EDGES:
				getTaxiwayEdges().clear();
				getTaxiwayEdges().addAll((Collection<? extends TaxiwayEdge>)newValue);
				return;
			case SlopewrightPackage.AERODROME__CIRCUITS:
				getCircuits().clear();
				getCircuits().addAll((Collection<? extends Circuit>)newValue);
				return;
			case SlopewrightPackage.AERODROME__EQUIPMENT_TYPES:
				getEquipmentTypes().clear();
				getEquipmentTypes().addAll((Collection<? extends EquipmentType>)newValue);
				return;
			case SlopewrightPackage.AERODROME__BACKGROUND_IMAGES:
				getBackgroundImages().clear();
				getBackgroundImages().addAll((Collection<? extends BackgroundImage>)newValue);
				return;
			case SlopewrightPackage.AERODROME__OBSTACLE_SURVEYS:
				getObstacleSurveys().clear();
				getObstacleSurveys().addAll((Collection<? extends ObstacleSurvey>)newValue);
				return;
		}
		super.eSet(featureID, newValue);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eUnset(int featureID) {
		switch (featureID) {
			case SlopewrightPackage.AERODROME__IDENTIFIER:
				setIdentifier(IDENTIFIER_EDEFAULT);
				return;
			case SlopewrightPackage.AERODROME__LATITUDE_DEG:
				setLatitudeDeg(LATITUDE_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.AERODROME__LONGITUDE_DEG:
				setLongitudeDeg(LONGITUDE_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.AERODROME__ELEVATION_M:
				setElevationM(ELEVATION_M_EDEFAULT);
				return;
			case SlopewrightPackage.AERODROME__VERTICAL_DATUM:
				setVerticalDatum(VERTICAL_DATUM_EDEFAULT);
				return;
			case SlopewrightPackage.AERODROME__GEOID_OFFSET_M:
				setGeoidOffsetM(GEOID_OFFSET_M_EDEFAULT);
				return;
			case SlopewrightPackage.AERODROME__COORDINATE_REFERENCE:
				setCoordinateReference(COORDINATE_REFERENCE_EDEFAULT);
				return;
			case SlopewrightPackage.AERODROME__COORDINATE_EPOCH:
				setCoordinateEpoch(COORDINATE_EPOCH_EDEFAULT);
				return;
			case SlopewrightPackage.AERODROME__COORDINATE_ACCURACY_M:
				setCoordinateAccuracyM(COORDINATE_ACCURACY_M_EDEFAULT);
				return;
			case SlopewrightPackage.AERODROME__GRID_ROTATION_DEG:
				setGridRotationDeg(GRID_ROTATION_DEG_EDEFAULT);
				return;
			case SlopewrightPackage.AERODROME__MAGNETIC_VARIATION:
				setMagneticVariation((MagneticVariation)null);
				return;
			case SlopewrightPackage.AERODROME__RUNWAYS:
				getRunways().clear();
				return;
			case SlopewrightPackage.AERODROME__HELIPADS:
				getHelipads().clear();
				return;
			case SlopewrightPackage.AERODROME__AEROPLANE_GROUPS:
				getAeroplaneGroups().clear();
				return;
			case SlopewrightPackage.AERODROME__OBSTACLES:
				getObstacles().clear();
				return;
			case SlopewrightPackage.AERODROME__GROUND_LEVELS:
				getGroundLevels().clear();
				return;
			case SlopewrightPackage.AERODROME__TAXIWAY_EDGES:
				getTaxiwayEdges().clear();
				return;
			case SlopewrightPackage.AERODROME__CIRCUITS:
				getCircuits().clear();
				return;
			case SlopewrightPackage.AERODROME__EQUIPMENT_TYPES:
				getEquipmentTypes().clear();
				return;
			case SlopewrightPackage.AERODROME__BACKGROUND_IMAGES:
				getBackgroundImages().clear();
				return;
			case SlopewrightPackage.AERODROME__OBSTACLE_SURVEYS:
				getObstacleSurveys().clear();
				return;
		}
		super.eUnset(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public boolean eIsSet(int featureID) {
		switch (featureID) {
			case SlopewrightPackage.AERODROME__IDENTIFIER:
				return IDENTIFIER_EDEFAULT == null ? identifier != null : !IDENTIFIER_EDEFAULT.equals(identifier);
			case SlopewrightPackage.AERODROME__LATITUDE_DEG:
				return LATITUDE_DEG_EDEFAULT == null ? latitudeDeg != null : !LATITUDE_DEG_EDEFAULT.equals(latitudeDeg);
			case SlopewrightPackage.AERODROME__LONGITUDE_DEG:
				return LONGITUDE_DEG_EDEFAULT == null ? longitudeDeg != null : !LONGITUDE_DEG_EDEFAULT.equals(longitudeDeg);
			case SlopewrightPackage.AERODROME__ELEVATION_M:
				return ELEVATION_M_EDEFAULT == null ? elevationM != null : !ELEVATION_M_EDEFAULT.equals(elevationM);
			case SlopewrightPackage.AERODROME__VERTICAL_DATUM:
				return VERTICAL_DATUM_EDEFAULT == null ? verticalDatum != null : !VERTICAL_DATUM_EDEFAULT.equals(verticalDatum);
			case SlopewrightPackage.AERODROME__GEOID_OFFSET_M:
				return GEOID_OFFSET_M_EDEFAULT == null ? geoidOffsetM != null : !GEOID_OFFSET_M_EDEFAULT.equals(geoidOffsetM);
			case SlopewrightPackage.AERODROME__COORDINATE_REFERENCE:
				return COORDINATE_REFERENCE_EDEFAULT == null ? coordinateReference != null : !COORDINATE_REFERENCE_EDEFAULT.equals(coordinateReference);
			case SlopewrightPackage.AERODROME__COORDINATE_EPOCH:
				return COORDINATE_EPOCH_EDEFAULT == null ? coordinateEpoch != null : !COORDINATE_EPOCH_EDEFAULT.equals(coordinateEpoch);
			case SlopewrightPackage.AERODROME__COORDINATE_ACCURACY_M:
				return COORDINATE_ACCURACY_M_EDEFAULT == null ? coordinateAccuracyM != null : !COORDINATE_ACCURACY_M_EDEFAULT.equals(coordinateAccuracyM);
			case SlopewrightPackage.AERODROME__GRID_ROTATION_DEG:
				return GRID_ROTATION_DEG_EDEFAULT == null ? gridRotationDeg != null : !GRID_ROTATION_DEG_EDEFAULT.equals(gridRotationDeg);
			case SlopewrightPackage.AERODROME__MAGNETIC_VARIATION:
				return magneticVariation != null;
			case SlopewrightPackage.AERODROME__RUNWAYS:
				return runways != null && !runways.isEmpty();
			case SlopewrightPackage.AERODROME__HELIPADS:
				return helipads != null && !helipads.isEmpty();
			case SlopewrightPackage.AERODROME__AEROPLANE_GROUPS:
				return aeroplaneGroups != null && !aeroplaneGroups.isEmpty();
			case SlopewrightPackage.AERODROME__OBSTACLES:
				return obstacles != null && !obstacles.isEmpty();
			case SlopewrightPackage.AERODROME__GROUND_LEVELS:
				return groundLevels != null && !groundLevels.isEmpty();
			case SlopewrightPackage.AERODROME__TAXIWAY_EDGES:
				return taxiwayEdges != null && !taxiwayEdges.isEmpty();
			case SlopewrightPackage.AERODROME__CIRCUITS:
				return circuits != null && !circuits.isEmpty();
			case SlopewrightPackage.AERODROME__EQUIPMENT_TYPES:
				return equipmentTypes != null && !equipmentTypes.isEmpty();
			case SlopewrightPackage.AERODROME__BACKGROUND_IMAGES:
				return backgroundImages != null && !backgroundImages.isEmpty();
			case SlopewrightPackage.AERODROME__OBSTACLE_SURVEYS:
				return obstacleSurveys != null && !obstacleSurveys.isEmpty();
		}
		return super.eIsSet(featureID);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String toString() {
		if (eIsProxy()) return super.toString();

		StringBuilder result = new StringBuilder(super.toString());
		result.append(" (identifier: ");
		result.append(identifier);
		result.append(", latitudeDeg: ");
		result.append(latitudeDeg);
		result.append(", longitudeDeg: ");
		result.append(longitudeDeg);
		result.append(", elevationM: ");
		result.append(elevationM);
		result.append(", verticalDatum: ");
		result.append(verticalDatum);
		result.append(", geoidOffsetM: ");
		result.append(geoidOffsetM);
		result.append(", coordinateReference: ");
		result.append(coordinateReference);
		result.append(", coordinateEpoch: ");
		result.append(coordinateEpoch);
		result.append(", coordinateAccuracyM: ");
		result.append(coordinateAccuracyM);
		result.append(", gridRotationDeg: ");
		result.append(gridRotationDeg);
		result.append(')');
		return result.toString();
	}

} //AerodromeImpl
