@echo off
rem Starts Drillsheaf. Builds it first when the build is missing; after that no Maven and no network.
setlocal
set "HOME_DIR=%~dp0"
if "%HOME_DIR:~-1%"=="\" set "HOME_DIR=%HOME_DIR:~0,-1%"
set "JAVA_EXE=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA_EXE=%JAVA_HOME%\bin\java.exe"
"%JAVA_EXE%" -version >nul 2>&1
if errorlevel 1 (
    echo Drillsheaf needs Java 17 or newer, and none was found. Install a JDK 17, or set JAVA_HOME to one. 1>&2
    exit /b 2
)
if not exist "%HOME_DIR%\target\drillsheaf.jar" (
    echo Building Drillsheaf. This happens once, needs the network and takes a minute or two. 1>&2
    pushd "%HOME_DIR%"
    call mvnw.cmd -q -B -DskipTests package 1>&2
    if errorlevel 1 (
        popd
        echo The build did not finish; the lines above say why. A JDK 17 and a way to Maven Central are needed this one time. 1>&2
        exit /b 1
    )
    popd
)
"%JAVA_EXE%" -Xshare:auto -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmx1g -Djava.awt.headless=true ^
    "-Djavax.xml.transform.TransformerFactory=com.sun.org.apache.xalan.internal.xsltc.trax.TransformerFactoryImpl" ^
    "-Ddrillsheaf.home=%HOME_DIR%" -jar "%HOME_DIR%\target\drillsheaf.jar" %*
exit /b %ERRORLEVEL%
