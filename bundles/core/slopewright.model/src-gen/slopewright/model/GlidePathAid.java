/**
 */
package slopewright.model;


/**
 * <!-- begin-user-doc -->
 * A representation of the model object '<em><b>Glide Path Aid</b></em>'.
 * <!-- end-user-doc -->
 *
 * <p>
 * The following features are supported:
 * </p>
 * <ul>
 *   <li>{@link slopewright.model.GlidePathAid#getKind <em>Kind</em>}</li>
 *   <li>{@link slopewright.model.GlidePathAid#getPathAngleDeg <em>Path Angle Deg</em>}</li>
 *   <li>{@link slopewright.model.GlidePathAid#getReferenceDatumHeightM <em>Reference Datum Height M</em>}</li>
 *   <li>{@link slopewright.model.GlidePathAid#getOriginAlongM <em>Origin Along M</em>}</li>
 *   <li>{@link slopewright.model.GlidePathAid#getAntennaAlongM <em>Antenna Along M</em>}</li>
 *   <li>{@link slopewright.model.GlidePathAid#getAntennaRightM <em>Antenna Right M</em>}</li>
 *   <li>{@link slopewright.model.GlidePathAid#getCriticalAreaLengthM <em>Critical Area Length M</em>}</li>
 *   <li>{@link slopewright.model.GlidePathAid#getCriticalAreaWidthM <em>Critical Area Width M</em>}</li>
 *   <li>{@link slopewright.model.GlidePathAid#getCriticalAreaSource <em>Critical Area Source</em>}</li>
 * </ul>
 *
 * @see slopewright.model.SlopewrightPackage#getGlidePathAid()
 * @model
 * @generated
 */
public interface GlidePathAid extends Named {
	/**
	 * Returns the value of the '<em><b>Kind</b></em>' attribute.
	 * The literals are from the enumeration {@link slopewright.model.GlidePathKind}.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Kind</em>' attribute.
	 * @see slopewright.model.GlidePathKind
	 * @see #setKind(GlidePathKind)
	 * @see slopewright.model.SlopewrightPackage#getGlidePathAid_Kind()
	 * @model
	 * @generated
	 */
	GlidePathKind getKind();

	/**
	 * Sets the value of the '{@link slopewright.model.GlidePathAid#getKind <em>Kind</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Kind</em>' attribute.
	 * @see slopewright.model.GlidePathKind
	 * @see #getKind()
	 * @generated
	 */
	void setKind(GlidePathKind value);

	/**
	 * Returns the value of the '<em><b>Path Angle Deg</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Path Angle Deg</em>' attribute.
	 * @see #setPathAngleDeg(Double)
	 * @see slopewright.model.SlopewrightPackage#getGlidePathAid_PathAngleDeg()
	 * @model
	 * @generated
	 */
	Double getPathAngleDeg();

	/**
	 * Sets the value of the '{@link slopewright.model.GlidePathAid#getPathAngleDeg <em>Path Angle Deg</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Path Angle Deg</em>' attribute.
	 * @see #getPathAngleDeg()
	 * @generated
	 */
	void setPathAngleDeg(Double value);

	/**
	 * Returns the value of the '<em><b>Reference Datum Height M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Reference Datum Height M</em>' attribute.
	 * @see #setReferenceDatumHeightM(Double)
	 * @see slopewright.model.SlopewrightPackage#getGlidePathAid_ReferenceDatumHeightM()
	 * @model
	 * @generated
	 */
	Double getReferenceDatumHeightM();

	/**
	 * Sets the value of the '{@link slopewright.model.GlidePathAid#getReferenceDatumHeightM <em>Reference Datum Height M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Reference Datum Height M</em>' attribute.
	 * @see #getReferenceDatumHeightM()
	 * @generated
	 */
	void setReferenceDatumHeightM(Double value);

	/**
	 * Returns the value of the '<em><b>Origin Along M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Origin Along M</em>' attribute.
	 * @see #setOriginAlongM(Double)
	 * @see slopewright.model.SlopewrightPackage#getGlidePathAid_OriginAlongM()
	 * @model
	 * @generated
	 */
	Double getOriginAlongM();

	/**
	 * Sets the value of the '{@link slopewright.model.GlidePathAid#getOriginAlongM <em>Origin Along M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Origin Along M</em>' attribute.
	 * @see #getOriginAlongM()
	 * @generated
	 */
	void setOriginAlongM(Double value);

	/**
	 * Returns the value of the '<em><b>Antenna Along M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Antenna Along M</em>' attribute.
	 * @see #setAntennaAlongM(Double)
	 * @see slopewright.model.SlopewrightPackage#getGlidePathAid_AntennaAlongM()
	 * @model
	 * @generated
	 */
	Double getAntennaAlongM();

	/**
	 * Sets the value of the '{@link slopewright.model.GlidePathAid#getAntennaAlongM <em>Antenna Along M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Antenna Along M</em>' attribute.
	 * @see #getAntennaAlongM()
	 * @generated
	 */
	void setAntennaAlongM(Double value);

	/**
	 * Returns the value of the '<em><b>Antenna Right M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Antenna Right M</em>' attribute.
	 * @see #setAntennaRightM(Double)
	 * @see slopewright.model.SlopewrightPackage#getGlidePathAid_AntennaRightM()
	 * @model
	 * @generated
	 */
	Double getAntennaRightM();

	/**
	 * Sets the value of the '{@link slopewright.model.GlidePathAid#getAntennaRightM <em>Antenna Right M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Antenna Right M</em>' attribute.
	 * @see #getAntennaRightM()
	 * @generated
	 */
	void setAntennaRightM(Double value);

	/**
	 * Returns the value of the '<em><b>Critical Area Length M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Critical Area Length M</em>' attribute.
	 * @see #setCriticalAreaLengthM(Double)
	 * @see slopewright.model.SlopewrightPackage#getGlidePathAid_CriticalAreaLengthM()
	 * @model
	 * @generated
	 */
	Double getCriticalAreaLengthM();

	/**
	 * Sets the value of the '{@link slopewright.model.GlidePathAid#getCriticalAreaLengthM <em>Critical Area Length M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Critical Area Length M</em>' attribute.
	 * @see #getCriticalAreaLengthM()
	 * @generated
	 */
	void setCriticalAreaLengthM(Double value);

	/**
	 * Returns the value of the '<em><b>Critical Area Width M</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Critical Area Width M</em>' attribute.
	 * @see #setCriticalAreaWidthM(Double)
	 * @see slopewright.model.SlopewrightPackage#getGlidePathAid_CriticalAreaWidthM()
	 * @model
	 * @generated
	 */
	Double getCriticalAreaWidthM();

	/**
	 * Sets the value of the '{@link slopewright.model.GlidePathAid#getCriticalAreaWidthM <em>Critical Area Width M</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Critical Area Width M</em>' attribute.
	 * @see #getCriticalAreaWidthM()
	 * @generated
	 */
	void setCriticalAreaWidthM(Double value);

	/**
	 * Returns the value of the '<em><b>Critical Area Source</b></em>' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @return the value of the '<em>Critical Area Source</em>' attribute.
	 * @see #setCriticalAreaSource(String)
	 * @see slopewright.model.SlopewrightPackage#getGlidePathAid_CriticalAreaSource()
	 * @model
	 * @generated
	 */
	String getCriticalAreaSource();

	/**
	 * Sets the value of the '{@link slopewright.model.GlidePathAid#getCriticalAreaSource <em>Critical Area Source</em>}' attribute.
	 * <!-- begin-user-doc -->
	 * <!-- end-user-doc -->
	 * @param value the new value of the '<em>Critical Area Source</em>' attribute.
	 * @see #getCriticalAreaSource()
	 * @generated
	 */
	void setCriticalAreaSource(String value);

} // GlidePathAid
