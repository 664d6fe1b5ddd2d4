using HortiCalc.Climate;

namespace HortiCalc.Json;

internal sealed class PsychrometerConverter()
    : KeyedConverter<Psychrometer>("psychrometer", "psychrometer.ventilated", Psychrometer.FromKey, method => method.Evidence.Key);
