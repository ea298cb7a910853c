@echo off
rem Starts the tool on Windows: from the source tree, or copied to the folder of the jar.
setlocal
set "folder=%~dp0"
if not exist "%folder%ringstate.jar" set "folder=%~dp0target\"
if not exist "%folder%ringstate.jar" (
  echo ringstate: %folder%ringstate.jar is missing; README.md says how to build it 1>&2
  exit /b 1
)
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
"%java%" -XX:+UseSerialGC -jar "%folder%ringstate.jar" %*
exit /b %errorlevel%
