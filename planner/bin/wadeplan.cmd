@echo off
rem Starts Wadeplan. Builds it first where it has not been built.
setlocal
set "HOME_DIR=%~dp0..\.."
set "CLI_JAR=%HOME_DIR%\planner\cli\target\wadeplan-cli.jar"
set "DESKTOP_JAR=%HOME_DIR%\planner\desktop\target\wadeplan-desktop.jar"
if exist "%CLI_JAR%" if exist "%DESKTOP_JAR%" goto start
echo wadeplan: building once; the first time Maven fetches what it needs, which takes a few minutes ... 1>&2
pushd "%HOME_DIR%"
call mvn -q -B -Dmaven.test.skip=true -pl planner/cli,planner/desktop -am package 1>&2
if errorlevel 1 (
  echo wadeplan: the build failed; what Maven said stands above. 1>&2
  popd
  exit /b 5
)
popd
:start
if "%~1"=="window" (
  java "-Dwadeplan.home=%HOME_DIR%" -jar "%DESKTOP_JAR%" %2 %3 %4 %5
) else (
  java "-Dwadeplan.home=%HOME_DIR%" -Djava.awt.headless=true -jar "%CLI_JAR%" %*
)
exit /b %errorlevel%
