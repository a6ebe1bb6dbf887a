@echo off
rem Runs barsheet.jar, which lies beside this file.
java -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -jar "%~dp0barsheet.jar" %*
