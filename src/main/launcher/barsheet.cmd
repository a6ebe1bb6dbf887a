@echo off
rem Starts barsheet: with the runtime beside this file where one came with it, else barsheet.jar with
rem JAVA_HOME's Java or the first on the PATH.
setlocal
if exist "%~dp0runtime\bin\java.exe" (
  "%~dp0runtime\bin\java.exe" -m barsheet/org.barsheet.cli.Barsheet %*
  exit /b
)
set "java="
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "java=%JAVA_HOME%\bin\java.exe"
if not defined java for %%j in (java.exe) do set "java=%%~$PATH:j"
if not defined java (
  echo barsheet: No Java found. 1>&2
  goto install
)
set "version="
for /f "tokens=3" %%v in ('^""%java%" -version 2^>^&1 ^| findstr /c:" version "^"') do set "version=%%~v"
if not defined version (
  echo barsheet: No Java found: "%java%" does not run. 1>&2
  goto install
)
if "%version:~0,2%"=="1." set "version=%version:~2%"
for /f "delims=.-_+" %%n in ("%version%") do set "version=%%n"
if %version% lss 17 (
  echo barsheet: Java %version% is too old: "%java%" 1>&2
  goto install
)
"%java%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xms128m -Xlog:disable -Xlog:all=error:stderr -jar "%~dp0barsheet.jar" %*
exit /b

:install
echo   Install Java 17 or later, or set JAVA_HOME to the folder of one. 1>&2
exit /b 69
