# Compiler settings of every target: one interface library for warnings and flags, ccache if present.
set(CMAKE_CXX_STANDARD 20)
set(CMAKE_CXX_STANDARD_REQUIRED ON)
set(CMAKE_CXX_EXTENSIONS OFF)
set(CMAKE_EXPORT_COMPILE_COMMANDS ON)

set(stow_optimise_release -O2)
set(stow_optimise_debug -O0 -g)
set(stow_optimise_asan -O1 -g1 -fno-omit-frame-pointer -fsanitize=fuzzer-no-link,address,undefined
                       -fno-sanitize-recover=undefined
                       -fprofile-instr-generate -fcoverage-mapping) # one run tells both: faults, and what was run through
if(NOT DEFINED stow_optimise_${STOW_KIND})
  message(FATAL_ERROR "STOW_KIND is '${STOW_KIND}'; it can be release, debug or asan")
endif()
# No contraction of a*b+c: an answer must not depend on the processor.
add_compile_options(${stow_optimise_${STOW_KIND}} -ffp-contract=off)
if(STOW_KIND STREQUAL "asan")
  string(REPLACE "fuzzer-no-link," "" stow_link "${stow_optimise_${STOW_KIND}}")
  add_link_options(${stow_link})
endif()

# Own code: strict. Modules with QML files leave out -Wshadow (generated code trips it).
add_library(stow_warnings INTERFACE)
target_compile_options(stow_warnings INTERFACE -Wall -Wextra -Wpedantic -Wshadow -Wconversion -Wsign-conversion -Werror)
add_library(stow_warnings_generated INTERFACE)
target_compile_options(stow_warnings_generated INTERFACE -Wall -Wextra -Werror)

find_program(STOW_CCACHE ccache)
if(STOW_CCACHE AND NOT CMAKE_CXX_COMPILER_LAUNCHER)
  # Hits across folders: paths relative to the source, precompiled headers allowed.
  set(CMAKE_CXX_COMPILER_LAUNCHER
      ${CMAKE_COMMAND} -E env CCACHE_BASEDIR=${CMAKE_SOURCE_DIR} CCACHE_NOHASHDIR=1
      CCACHE_SLOPPINESS=pch_defines,time_macros,include_file_mtime,include_file_ctime ${STOW_CCACHE})
endif()
