/**
 */
package slopewright.model.impl;

import org.eclipse.emf.common.notify.Notification;

import org.eclipse.emf.ecore.EClass;

import org.eclipse.emf.ecore.impl.ENotificationImpl;

import slopewright.model.SlopewrightPackage;
import slopewright.model.SurveyBlock;

/**
 * <!-- begin-user-doc -->
 * An implementation of the model object '<em><b>Survey Block</b></em>'.
 * <!-- end-user-doc -->
 * <p>
 * The following features are implemented:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.impl.SurveyBlockImpl#getKind <em>Kind</em>}</li>
 *   <li>{@link slopewright.model.impl.SurveyBlockImpl#getPath <em>Path</em>}</li>
 *   <li>{@link slopewright.model.impl.SurveyBlockImpl#getSha256 <em>Sha256</em>}</li>
 *   <li>{@link slopewright.model.impl.SurveyBlockImpl#getPointCount <em>Point Count</em>}</li>
 *   <li>{@link slopewright.model.impl.SurveyBlockImpl#getHorizontalAccuracyM <em>Horizontal Accuracy M</em>}</li>
 *   <li>{@link slopewright.model.impl.SurveyBlockImpl#getVerticalAccuracyM <em>Vertical Accuracy M</em>}</li>
 *   <li>{@link slopewright.model.impl.SurveyBlockImpl#getSource <em>Source</em>}</li>
 *   <li>{@link slopewright.model.impl.SurveyBlockImpl#getDate <em>Date</em>}</li>
 * </ul>
 *
 * @generated
 */
public class SurveyBlockImpl extends NamedImpl implements SurveyBlock {
	/**
	 * The default value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected static final String KIND_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getKind() <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getKind()
	 * @generated
	 * @ordered
	 */
	protected String kind = KIND_EDEFAULT;

	/**
	 * The default value of the '{@link #getPath() <em>Path</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPath()
	 * @generated
	 * @ordered
	 */
	protected static final String PATH_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPath() <em>Path</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPath()
	 * @generated
	 * @ordered
	 */
	protected String path = PATH_EDEFAULT;

	/**
	 * The default value of the '{@link #getSha256() <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSha256()
	 * @generated
	 * @ordered
	 */
	protected static final String SHA256_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSha256() <em>Sha256</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSha256()
	 * @generated
	 * @ordered
	 */
	protected String sha256 = SHA256_EDEFAULT;

	/**
	 * The default value of the '{@link #getPointCount() <em>Point Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPointCount()
	 * @generated
	 * @ordered
	 */
	protected static final Integer POINT_COUNT_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getPointCount() <em>Point Count</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getPointCount()
	 * @generated
	 * @ordered
	 */
	protected Integer pointCount = POINT_COUNT_EDEFAULT;

	/**
	 * The default value of the '{@link #getHorizontalAccuracyM() <em>Horizontal Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHorizontalAccuracyM()
	 * @generated
	 * @ordered
	 */
	protected static final Double HORIZONTAL_ACCURACY_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getHorizontalAccuracyM() <em>Horizontal Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getHorizontalAccuracyM()
	 * @generated
	 * @ordered
	 */
	protected Double horizontalAccuracyM = HORIZONTAL_ACCURACY_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getVerticalAccuracyM() <em>Vertical Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVerticalAccuracyM()
	 * @generated
	 * @ordered
	 */
	protected static final Double VERTICAL_ACCURACY_M_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getVerticalAccuracyM() <em>Vertical Accuracy M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getVerticalAccuracyM()
	 * @generated
	 * @ordered
	 */
	protected Double verticalAccuracyM = VERTICAL_ACCURACY_M_EDEFAULT;

	/**
	 * The default value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected static final String SOURCE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getSource() <em>Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getSource()
	 * @generated
	 * @ordered
	 */
	protected String source = SOURCE_EDEFAULT;

	/**
	 * The default value of the '{@link #getDate() <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDate()
	 * @generated
	 * @ordered
	 */
	protected static final String DATE_EDEFAULT = null;

	/**
	 * The cached value of the '{@link #getDate() <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @see #getDate()
	 * @generated
	 * @ordered
	 */
	protected String date = DATE_EDEFAULT;

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	protected SurveyBlockImpl() {
		super();
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	protected EClass eStaticClass() {
		return SlopewrightPackage.Literals.SURVEY_BLOCK;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getKind() {
		return kind;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setKind(String newKind) {
		String oldKind = kind;
		kind = newKind;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.SURVEY_BLOCK__KIND, oldKind, kind));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getPath() {
		return path;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPath(String newPath) {
		String oldPath = path;
		path = newPath;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.SURVEY_BLOCK__PATH, oldPath, path));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSha256() {
		return sha256;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSha256(String newSha256) {
		String oldSha256 = sha256;
		sha256 = newSha256;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.SURVEY_BLOCK__SHA256, oldSha256, sha256));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Integer getPointCount() {
		return pointCount;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setPointCount(Integer newPointCount) {
		Integer oldPointCount = pointCount;
		pointCount = newPointCount;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.SURVEY_BLOCK__POINT_COUNT, oldPointCount, pointCount));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getHorizontalAccuracyM() {
		return horizontalAccuracyM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setHorizontalAccuracyM(Double newHorizontalAccuracyM) {
		Double oldHorizontalAccuracyM = horizontalAccuracyM;
		horizontalAccuracyM = newHorizontalAccuracyM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.SURVEY_BLOCK__HORIZONTAL_ACCURACY_M, oldHorizontalAccuracyM, horizontalAccuracyM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Double getVerticalAccuracyM() {
		return verticalAccuracyM;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setVerticalAccuracyM(Double newVerticalAccuracyM) {
		Double oldVerticalAccuracyM = verticalAccuracyM;
		verticalAccuracyM = newVerticalAccuracyM;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.SURVEY_BLOCK__VERTICAL_ACCURACY_M, oldVerticalAccuracyM, verticalAccuracyM));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getSource() {
		return source;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setSource(String newSource) {
		String oldSource = source;
		source = newSource;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.SURVEY_BLOCK__SOURCE, oldSource, source));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public String getDate() {
		return date;
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void setDate(String newDate) {
		String oldDate = date;
		date = newDate;
		if (eNotificationRequired())
			eNotify(new ENotificationImpl(this, Notification.SET, SlopewrightPackage.SURVEY_BLOCK__DATE, oldDate, date));
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public Object eGet(int featureID, boolean resolve, boolean coreType) {
		switch (featureID) {
			case SlopewrightPackage.SURVEY_BLOCK__KIND:
				return getKind();
			case SlopewrightPackage.SURVEY_BLOCK__PATH:
				return getPath();
			case SlopewrightPackage.SURVEY_BLOCK__SHA256:
				return getSha256();
			case SlopewrightPackage.SURVEY_BLOCK__POINT_COUNT:
				return getPointCount();
			case SlopewrightPackage.SURVEY_BLOCK__HORIZONTAL_ACCURACY_M:
				return getHorizontalAccuracyM();
			case SlopewrightPackage.SURVEY_BLOCK__VERTICAL_ACCURACY_M:
				return getVerticalAccuracyM();
			case SlopewrightPackage.SURVEY_BLOCK__SOURCE:
				return getSource();
			case SlopewrightPackage.SURVEY_BLOCK__DATE:
				return getDate();
		}
		return super.eGet(featureID, resolve, coreType);
	}

	/**
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @generated
	 */
	@Override
	public void eSet(int featureID, Object newValue) {
		switch (featureID) {
			case SlopewrightPackage.SURVEY_BLOCK__KIND:
				setKind((String)newValue);
				return;
			case SlopewrightPackage.SURVEY_BLOCK__PATH:
				setPath((String)newValue);
				return;
			case SlopewrightPackage.SURVEY_BLOCK__SHA256:
				setSha256((String)newValue);
				return;
			case SlopewrightPackage.SURVEY_BLOCK__POINT_COUNT:
				setPointCount((Integer)newValue);
				return;
			case SlopewrightPackage.SURVEY_BLOCK__HORIZONTAL_ACCURACY_M:
				setHorizontalAccuracyM((Double)newValue);
				return;
			case SlopewrightPackage.SURVEY_BLOCK__VERTICAL_ACCURACY_M:
				setVerticalAccuracyM((Double)newValue);
				return;
			case SlopewrightPackage.SURVEY_BLOCK__SOURCE:
				setSource((String)newValue);
				return;
			case SlopewrightPackage.SURVEY_BLOCK__DATE:
				setDate((String)newValue);
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
			case SlopewrightPackage.SURVEY_BLOCK__KIND:
				setKind(KIND_EDEFAULT);
				return;
			case SlopewrightPackage.SURVEY_BLOCK__PATH:
				setPath(PATH_EDEFAULT);
				return;
			case SlopewrightPackage.SURVEY_BLOCK__SHA256:
				setSha256(SHA256_EDEFAULT);
				return;
			case SlopewrightPackage.SURVEY_BLOCK__POINT_COUNT:
				setPointCount(POINT_COUNT_EDEFAULT);
				return;
			case SlopewrightPackage.SURVEY_BLOCK__HORIZONTAL_ACCURACY_M:
				setHorizontalAccuracyM(HORIZONTAL_ACCURACY_M_EDEFAULT);
				return;
			case SlopewrightPackage.SURVEY_BLOCK__VERTICAL_ACCURACY_M:
				setVerticalAccuracyM(VERTICAL_ACCURACY_M_EDEFAULT);
				return;
			case SlopewrightPackage.SURVEY_BLOCK__SOURCE:
				setSource(SOURCE_EDEFAULT);
				return;
			case SlopewrightPackage.SURVEY_BLOCK__DATE:
				setDate(DATE_EDEFAULT);
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
			case SlopewrightPackage.SURVEY_BLOCK__KIND:
				return KIND_EDEFAULT == null ? kind != null : !KIND_EDEFAULT.equals(kind);
			case SlopewrightPackage.SURVEY_BLOCK__PATH:
				return PATH_EDEFAULT == null ? path != null : !PATH_EDEFAULT.equals(path);
			case SlopewrightPackage.SURVEY_BLOCK__SHA256:
				return SHA256_EDEFAULT == null ? sha256 != null : !SHA256_EDEFAULT.equals(sha256);
			case SlopewrightPackage.SURVEY_BLOCK__POINT_COUNT:
				return POINT_COUNT_EDEFAULT == null ? pointCount != null : !POINT_COUNT_EDEFAULT.equals(pointCount);
			case SlopewrightPackage.SURVEY_BLOCK__HORIZONTAL_ACCURACY_M:
				return HORIZONTAL_ACCURACY_M_EDEFAULT == null ? horizontalAccuracyM != null : !HORIZONTAL_ACCURACY_M_EDEFAULT.equals(horizontalAccuracyM);
			case SlopewrightPackage.SURVEY_BLOCK__VERTICAL_ACCURACY_M:
				return VERTICAL_ACCURACY_M_EDEFAULT == null ? verticalAccuracyM != null : !VERTICAL_ACCURACY_M_EDEFAULT.equals(verticalAccuracyM);
			case SlopewrightPackage.SURVEY_BLOCK__SOURCE:
				return SOURCE_EDEFAULT == null ? source != null : !SOURCE_EDEFAULT.equals(source);
			case SlopewrightPackage.SURVEY_BLOCK__DATE:
				return DATE_EDEFAULT == null ? date != null : !DATE_EDEFAULT.equals(date);
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
		result.append(" (kind: ");
		result.append(kind);
		result.append(", path: ");
		result.append(path);
		result.append(", sha256: ");
		result.append(sha256);
		result.append(", pointCount: ");
		result.append(pointCount);
		result.append(", horizontalAccuracyM: ");
		result.append(horizontalAccuracyM);
		result.append(", verticalAccuracyM: ");
		result.append(verticalAccuracyM);
		result.append(", source: ");
		result.append(source);
		result.append(", date: ");
		result.append(date);
		result.append(')');
		return result.toString();
	}

} //SurveyBlockImpl
