@echo off
setlocal
set "FRETGLOSS_HOME=%~dp0.."
set "FRETGLOSS_JAVA=java"
if defined JAVA_HOME set "FRETGLOSS_JAVA=%JAVA_HOME%\bin\java"
"%FRETGLOSS_JAVA%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xshare:auto %JAVA_OPTS% -cp "%FRETGLOSS_HOME%\lib\*" org.fretgloss.annotator.cli.Main %*
exit /b %ERRORLEVEL%
