@echo off
rem Starts Slopewright: without words, or with one project file, its window; with other words the command line.
rem   SLOPEWRIGHT_DATA  folder of the window's own settings (default: .slopewright in the user's folder)
rem   JAVA_HOME         the Java to use (default: the java on the PATH); 17 or newer
setlocal
set "HERE=%~dp0"
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
if not defined SLOPEWRIGHT_DATA set "SLOPEWRIGHT_DATA=%USERPROFILE%\.slopewright"
set "CHOSEN="
set "LANGUAGE="
if exist "%SLOPEWRIGHT_DATA%\language" set /p CHOSEN=<"%SLOPEWRIGHT_DATA%\language"
if "%CHOSEN%"=="de" set "LANGUAGE=-nl de"
if "%CHOSEN%"=="en" set "LANGUAGE=-nl en"
set "LAUNCHER="
for %%J in ("%HERE%plugins\org.eclipse.equinox.launcher_*.jar") do set "LAUNCHER=%%~fJ"
if not defined LAUNCHER (
    echo slopewright: the installation is not complete: the launcher is missing. 1>&2
    exit /b 4
)
"%JAVA%" --version >nul 2>nul
if errorlevel 1 (
    echo slopewright: Java 17 or newer is needed. Install it, or set JAVA_HOME. 1>&2
    exit /b 4
)
set "OPTIONS=-XX:+UseSerialGC -Xshare:auto -Dfile.encoding=UTF-8"
if "%~1"=="" goto window
if not "%~2"=="" goto words
if /i "%~x1"==".slopewright" if exist "%~f1" goto file
:words
"%JAVA%" -Djava.awt.headless=true -XX:TieredStopAtLevel=1 %OPTIONS% -jar "%HERE%command-line\slopewright-cli.jar" %*
exit /b %ERRORLEVEL%
:file
"%JAVA%" %OPTIONS% -XX:MetaspaceSize=96m "-Dslopewright.start=%~f0" -jar "%LAUNCHER%" -nosplash %LANGUAGE% -application slopewright.rcp.application -data "%SLOPEWRIGHT_DATA%" "%~f1"
exit /b %ERRORLEVEL%
:window
"%JAVA%" %OPTIONS% -XX:MetaspaceSize=96m "-Dslopewright.start=%~f0" -jar "%LAUNCHER%" -nosplash %LANGUAGE% -application slopewright.rcp.application -data "%SLOPEWRIGHT_DATA%"
exit /b %ERRORLEVEL%
