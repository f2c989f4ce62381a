/**
 */
package slopewright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Measured Unit</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.MeasuredUnit#getSettingDeg <em>Setting Deg</em>}</li>
 *   <li>{@link slopewright.model.MeasuredUnit#getAlongM <em>Along M</em>}</li>
 *   <li>{@link slopewright.model.MeasuredUnit#getRightM <em>Right M</em>}</li>
 *   <li>{@link slopewright.model.MeasuredUnit#getLensElevationM <em>Lens Elevation M</em>}</li>
 *   <li>{@link slopewright.model.MeasuredUnit#getPerson <em>Person</em>}</li>
 *   <li>{@link slopewright.model.MeasuredUnit#getDate <em>Date</em>}</li>
 *   <li>{@link slopewright.model.MeasuredUnit#getInstrument <em>Instrument</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getMeasuredUnit()
 * @model
 * @generated
 */
public interface MeasuredUnit extends Identified {
	/**
	 * Returns the value of the '<em><b>Setting Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Setting Deg</em>' attribute.
	 * @see #setSettingDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getMeasuredUnit_SettingDeg()
	 * @model
	 * @generated
	 */
	Double getSettingDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.MeasuredUnit#getSettingDeg <em>Setting Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Setting Deg</em>' attribute.
	 * @see #getSettingDeg()
	 * @generated
	 */
	void setSettingDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Along M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Along M</em>' attribute.
	 * @see #setAlongM(Double)
	 * @see slopewright.model.SlopewrightPackage#getMeasuredUnit_AlongM()
	 * @model
	 * @generated
	 */
	Double getAlongM();

	/**
	 * Sets the value of the '{@link slopewright.model.MeasuredUnit#getAlongM <em>Along M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Along M</em>' attribute.
	 * @see #getAlongM()
	 * @generated
	 */
	void setAlongM(Double value);

	/**
	 * Returns the value of the '<em><b>Right M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Right M</em>' attribute.
	 * @see #setRightM(Double)
	 * @see slopewright.model.SlopewrightPackage#getMeasuredUnit_RightM()
	 * @model
	 * @generated
	 */
	Double getRightM();

	/**
	 * Sets the value of the '{@link slopewright.model.MeasuredUnit#getRightM <em>Right M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Right M</em>' attribute.
	 * @see #getRightM()
	 * @generated
	 */
	void setRightM(Double value);

	/**
	 * Returns the value of the '<em><b>Lens Elevation M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Lens Elevation M</em>' attribute.
	 * @see #setLensElevationM(Double)
	 * @see slopewright.model.SlopewrightPackage#getMeasuredUnit_LensElevationM()
	 * @model
	 * @generated
	 */
	Double getLensElevationM();

	/**
	 * Sets the value of the '{@link slopewright.model.MeasuredUnit#getLensElevationM <em>Lens Elevation M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Lens Elevation M</em>' attribute.
	 * @see #getLensElevationM()
	 * @generated
	 */
	void setLensElevationM(Double value);

	/**
	 * Returns the value of the '<em><b>Person</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Person</em>' attribute.
	 * @see #setPerson(String)
	 * @see slopewright.model.SlopewrightPackage#getMeasuredUnit_Person()
	 * @model
	 * @generated
	 */
	String getPerson();

	/**
	 * Sets the value of the '{@link slopewright.model.MeasuredUnit#getPerson <em>Person</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Person</em>' attribute.
	 * @see #getPerson()
	 * @generated
	 */
	void setPerson(String value);

	/**
	 * Returns the value of the '<em><b>Date</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Date</em>' attribute.
	 * @see #setDate(String)
	 * @see slopewright.model.SlopewrightPackage#getMeasuredUnit_Date()
	 * @model
	 * @generated
	 */
	String getDate();

	/**
	 * Sets the value of the '{@link slopewright.model.MeasuredUnit#getDate <em>Date</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Date</em>' attribute.
	 * @see #getDate()
	 * @generated
	 */
	void setDate(String value);

	/**
	 * Returns the value of the '<em><b>Instrument</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Instrument</em>' attribute.
	 * @see #setInstrument(String)
	 * @see slopewright.model.SlopewrightPackage#getMeasuredUnit_Instrument()
	 * @model
	 * @generated
	 */
	String getInstrument();

	/**
	 * Sets the value of the '{@link slopewright.model.MeasuredUnit#getInstrument <em>Instrument</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Instrument</em>' attribute.
	 * @see #getInstrument()
	 * @generated
	 */
	void setInstrument(String value);

} // MeasuredUnit
