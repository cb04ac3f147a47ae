# Compiler settings shared by every target, in one place.
set(CMAKE_CXX_STANDARD 20)
set(CMAKE_CXX_STANDARD_REQUIRED ON)
set(CMAKE_CXX_EXTENSIONS OFF)
set(CMAKE_EXPORT_COMPILE_COMMANDS ON)
if(NOT CMAKE_BUILD_TYPE)
  set(CMAKE_BUILD_TYPE Release)
endif()
set(CMAKE_CXX_FLAGS_RELEASE "-O2") # assertions stay on; -O3 only makes the build longer

find_program(CCACHE_PROGRAM ccache)
if(CCACHE_PROGRAM)
  set(CMAKE_CXX_COMPILER_LAUNCHER "${CCACHE_PROGRAM}")
endif()

add_library(withy_warnings INTERFACE)
target_compile_options(withy_warnings INTERFACE
  -Wall -Wextra -Wpedantic -Wshadow -Wnon-virtual-dtor -Wold-style-cast -Woverloaded-virtual
  -Wconversion -Wno-sign-conversion)
if(CMAKE_CXX_COMPILER_ID STREQUAL "GNU")
  # GCC 12 sees overlapping copies in std::string's operator+ where there are none (GCC bug 105651).
  target_compile_options(withy_warnings INTERFACE -Wno-restrict)
endif()
if(WITHY_UNITY AND CMAKE_CXX_COMPILER_ID STREQUAL "GNU")
  # Both take the sources of a batch for one: names of a neighbour, unnamed namespaces in what looks like a header.
  target_compile_options(withy_warnings INTERFACE -Wno-shadow -Wno-subobject-linkage)
endif()
if(WITHY_WERROR)
  target_compile_options(withy_warnings INTERFACE -Werror)
endif()

add_library(withy_sanitize INTERFACE)
if(WITHY_SANITIZE)
  target_compile_options(withy_sanitize INTERFACE
    -fsanitize=address,undefined -fno-sanitize-recover=undefined -fno-omit-frame-pointer)
  target_link_options(withy_sanitize INTERFACE -fsanitize=address,undefined)
endif()

# Sources in batches: most of a source's compile time is the headers it shares with its neighbours.
if(WITHY_UNITY)
  set(CMAKE_UNITY_BUILD ON)
  set(CMAKE_UNITY_BUILD_BATCH_SIZE 8)
endif()

# withy_layer(NAME DEPS...): a static library of ours, with our warnings, rooted at the source
# folder so that includes read as "core/model/season.h".
function(withy_layer name)
  add_library(${name} STATIC)
  target_include_directories(${name} PUBLIC "${PROJECT_SOURCE_DIR}")
  target_link_libraries(${name} PUBLIC ${ARGN} withy_sanitize PRIVATE withy_warnings)
endfunction()
